using MeltShop.Operations.Ladles;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What is left in the ladle: into dry pig moulds, back into a furnace, or into another ladle, each with its caution.</summary>
public sealed partial class RestCard
{
    private RestEntry entry = new();
    private long? ladle;

    [Parameter, EditorRequired]
    public LadleView View { get; set; } = null!;

    /// <summary>Not once the castings are released: whoever finds more iron then holds them first.</summary>
    private bool IsOffered => View.Treated!.State != TreatedLadleState.Released;

    private PouringView Pouring => View.Pouring!;

    private IEnumerable<Choice> Ways => Enum.GetValues<RestWay>()
        .Where(way => way switch { RestWay.PouredBack => View.OpenHeats.Count > 0, RestWay.IntoLadle => View.Others.Count > 0, RestWay.IntoEmpty => View.Vessels.Count > 0, _ => true })
        .Select(way => new Choice(way.ToString(), Text["Way." + way]));

    private IEnumerable<Choice> Furnaces => View.OpenHeats.Select(h => new Choice(PocketDraft.Text(h.Id), $"{h.FurnaceName}, {h.Number}"));

    private IEnumerable<Choice> Vessels => View.Vessels.Select(v => new Choice(PocketDraft.Text(v.Id), $"{v.Name}, {MassText.Show(v.FillLimitKg, 0)}"));

    private IEnumerable<Choice> Others => View.Others.Select(o => new Choice(PocketDraft.Text(o.Id), Text["OtherLadle", o.Ordinal, o.HeatNumber, o.LadleName, MassText.Show(Math.Max(0, o.LeftKg), 0), MassText.Show(o.FillLimitKg, 0)]));

    /// <summary>What would be over the fill limit of what was chosen, by the scales; null where it fits.</summary>
    private (double Kg, double LimitKg)? Overfill
    {
        get
        {
            var into = entry.Chosen switch
            {
                RestWay.IntoLadle => View.Others.Where(o => PocketDraft.Text(o.Id) == entry.IntoLadle.Value).Select(o => ((double, double)?)(Math.Max(0, o.LeftKg), o.FillLimitKg)).FirstOrDefault(),
                RestWay.IntoEmpty => View.Vessels.Where(v => PocketDraft.Text(v.Id) == entry.Vessel.Value).Select(v => ((double, double)?)(0, v.FillLimitKg)).FirstOrDefault(),
                _ => null,
            };
            return into is { Item1: var there, Item2: var limit } && there + entry.Kg.Value - limit is > 0 and var over ? (over, limit) : null;
        }
    }

    protected override void OnParametersSet()
    {
        if (ladle == Pouring.Times.TreatedLadleId) return;
        (entry, ladle) = (new(), Pouring.Times.TreatedLadleId);
        entry.Belongs("treatedLadleId", Pouring.Times.TreatedLadleId);
    }

    private void Saved()
    {
        entry.Way.Showing(nameof(RestWay.Pigged));
        foreach (var into in new[] { entry.HeatId, entry.IntoLadle, entry.Vessel, entry.Reason }) into.Showing(null);
        entry.Kg.Showing(null);
    }

    private string Words(RestView rest) => rest.IntoLadleId is null ? Text["Way.Pigged"]
        : rest.MixedMgPercent is { } mixed ? Text["IntoMixed", rest.IntoOrdinal!, NumberText.Show(mixed, 4)] : Text["IntoGrey", rest.IntoOrdinal!];
}

using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What moves a clock while pouring: a late inoculation and a temperature of the ladle.</summary>
public sealed partial class InoculationCard
{
    private InoculationEntry entry = new();
    private TemperatureEntry temperature = new();
    private (int Inoculations, int Temperatures) entered = (-1, -1);

    [Parameter, EditorRequired]
    public LadleView View { get; set; } = null!;

    /// <summary>Not once the castings are released.</summary>
    private bool IsOffered => View.Treated!.State != TreatedLadleState.Released;

    private PouringView Pouring => View.Pouring!;

    private IEnumerable<Choice> Places => Enum.GetValues<InoculationPlace>().Select(place => new Choice(place.ToString(), Text["Place." + place]));

    private IReadOnlyList<LotView>? Lots => View.Inoculants.FirstOrDefault(m => PocketDraft.Text(m.Id) == entry.Material.Value)?.Lots;

    protected override void OnParametersSet()
    {
        var treated = View.Treated!;
        if (entered.Inoculations != Pouring.Inoculations.Count)
        {
            entry = new();
            entry.Belongs("treatedLadleId", treated.Id);
            if (treated.Card is { } card) entry.Material.Showing(PocketDraft.Text(card.InoculantMaterialId));
        }

        if (entered.Temperatures != View.Temperatures.Count)
        {
            temperature = new();
            temperature.Belongs("heatId", treated.HeatId);
            temperature.Belongs("treatedLadleId", treated.Id);
        }

        entered = (Pouring.Inoculations.Count, View.Temperatures.Count);
    }
}

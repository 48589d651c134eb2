using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Route;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Heats;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>A coin from the last metal of the ladle, in the grid of every sample.</summary>
public sealed partial class LastMetalForm
{
    private SampleEntry entry = null!;

    [Parameter, EditorRequired]
    public TreatedLadleView Treated { get; set; } = null!;

    [Parameter, EditorRequired]
    public GradeView Grade { get; set; } = null!;

    /// <summary>The coin that was sent ahead, whose result this is; null for one that nobody announced.</summary>
    [Parameter]
    public CoinView? Coin { get; set; }

    /// <summary>The sample is taken for its magnesium first: its column needs no scrolling.</summary>
    private bool HasMagnesium => Grade.Family != IronFamily.Grey;

    private IEnumerable<Choice> Kinds => SampleEntry.OfTheLadle.Select(kind => new Choice(kind.ToString(), Text["Kind." + kind]));

    protected override void OnInitialized()
    {
        var limited = Grade.At(WindowStage.Poured).SelectMany(window => WindowQuantity.Find(window.Quantity)?.ToMeasure ?? []);
        var usual = limited.Union([Element.Si, Element.Mn, Element.P, Element.S]).Order();
        entry = new SampleEntry(HasMagnesium ? [Element.Mg, .. usual.Where(element => element != Element.Mg)] : usual);
        entry.Kind.Showing(nameof(SampleKind.LastMetal));
        entry.Belongs("heatId", Treated.HeatId);
        entry.Belongs("treatedLadleId", Treated.Id);
        if (Coin is { } coin) entry.Answers(coin);
    }

    private string Name(string path) => SampleDraft.Place(path) is { } cell ? $"{Text["BurnShort"]} {cell.Burn + 1} {cell.Symbol}" : path switch
    {
        "kind" => Text["SampleKind"],
        "coinNumber" => Text["Coin"],
        "observedAt" => Text["TakenAgo"],
        "instrumentId" => HeatText["Instrument"],
        "fracture" => HeatText["Fracture"],
        _ => Text["Remarks"],
    };
}

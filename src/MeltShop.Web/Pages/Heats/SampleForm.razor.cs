using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Route;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>A coin from the bath with its burns, made for the keyboard.</summary>
public sealed partial class SampleForm
{
    private SampleEntry entry = null!;

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    /// <summary>The coin that was sent ahead, whose result this is; null for one that nobody announced.</summary>
    [Parameter]
    public CoinView? Coin { get; set; }

    [Parameter]
    public EventCallback Saved { get; set; }

    [Parameter]
    public EventCallback Left { get; set; }

    private static readonly IReadOnlyList<SampleKind> Offered = [.. SampleKinds.OfTheBath, SampleKind.LadleBase, .. SampleKinds.OfFigures];

    private IEnumerable<KeyValuePair<FigureQuantity, QuantityEntry>> Figures => entry.Figures.Of(entry.Chosen);

    private IEnumerable<Choice> Kinds =>
        Offered.Select(name => new Choice(name.ToString(), Text["Kind." + name]));

    private IEnumerable<Finding> Unplaced => entry.Form.Unplaced.Where(finding => !finding.Path.StartsWith("burns[", StringComparison.Ordinal));

    protected override void OnInitialized()
    {
        var limited = Heat.Grade.At(WindowStage.Furnace).SelectMany(window => WindowQuantity.Find(window.Quantity)?.ToMeasure ?? []);
        entry = new SampleEntry(limited.Union([Element.C, Element.Si, Element.Mn, Element.P, Element.S]).Order());
        entry.Belongs("heatId", Heat.Heat.Id);
        if (Coin is { } coin) entry.Answers(coin);
    }

    private string Name(string path) => SampleDraft.Place(path) is { } cell ? Text["CellOf", cell.Burn + 1, cell.Symbol] : Text[path switch
    {
        "kind" => "SampleKind",
        "coinNumber" => "Coin",
        "observedAt" => "TakenAgo",
        "instrumentId" => "Instrument",
        "fracture" => "Fracture",
        ['f', 'i', 'g', ..] => "Figure." + path.Split('.')[^1],
        _ => "Remarks",
    }];
}

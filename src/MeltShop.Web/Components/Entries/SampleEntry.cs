using System.Globalization;
using System.Text.RegularExpressions;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations;
using MeltShop.Operations.Drafts;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Heats;

namespace MeltShop.Web.Components.Entries;

/// <summary>A coin with its burns: of the bath of a heat, or of the last metal of a ladle.</summary>
public sealed partial class SampleEntry : TypedEntry<long>
{
    /// <summary>More sparks a coin has no room for.</summary>
    public const int MostBurns = 20;

    public SampleEntry(IEnumerable<Element> elements)
    {
        Kind = Form.Choice("kind", isRequired: true).Showing(nameof(SampleKind.Bath));
        Coin = Form.Words("coinNumber");
        Remarks = Form.Words("remarks");
        Minutes = MinutesAgo.Field(Form);
        Burns = new SampleDraft(Form, elements);
    }

    public override string Operation => nameof(RecordSample);

    public TextEntry Kind { get; }

    public TextEntry Coin { get; }

    public TextEntry Remarks { get; }

    public QuantityEntry Minutes { get; }

    public SampleDraft Burns { get; }

    public override string? DraftSubject =>
        !About.ContainsKey("heatId") ? null : TreatedLadleId is { } ladle ? Operations.Drafts.DraftSubject.LastMetal(ladle) : Operations.Drafts.DraftSubject.BathSample(Id("heatId"));

    private long? TreatedLadleId => About.ContainsKey("treatedLadleId") ? Id("treatedLadleId") : null;

    /// <summary>Burn (from 0) and element symbol of a cell's path; null for a path of something else.</summary>
    public static (int Burn, string Symbol)? Place(string path) => CellPath().Match(path) is { Success: true } cell
        ? (int.Parse(cell.Groups[1].Value, NumberStyles.None, CultureInfo.InvariantCulture), cell.Groups[2].Value) : null;

    /// <inheritdoc/>
    public override FieldEntry? Field(string path)
    {
        if (Place(path) is not var (burn, symbol)) return base.Field(path);
        if (burn >= MostBurns || !Element.TryParse(symbol, out var element) || element == Element.Fe) return null;
        while (Burns.Burns <= burn) Burns.AddBurn();
        return Burns.Cell(burn, element);
    }

    protected override IEnumerable<Finding> Check() => Burns.Check();

    protected override Task<Outcome<long>> Run(IServiceProvider services, EntryMade made)
    {
        var kind = TreatedLadleId is null && Enum.TryParse<SampleKind>(Kind.Value, out var chosen) ? chosen : SampleKind.LastMetal;
        return services.GetRequiredService<RecordSample>().Run(made.By, new(
            made.Key, Minutes.Before(made.ObservedAt), Id("heatId"), TreatedLadleId, kind, Burns.Inputs(), Coin.Value, Remarks.Value) { DraftSubject = DraftSubject });
    }

    [GeneratedRegex(@"^burns\[([0-9]{1,2})\]\.([A-Z][a-z]?)$")]
    private static partial Regex CellPath();
}

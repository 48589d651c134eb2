using System.Globalization;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Samples;

/// <summary>What the computer of an instrument sends of one sample.</summary>
/// <param name="Id">The sender's own number of the sample; sent again, it is answered again and recorded once.</param>
/// <param name="Instrument">Its code.</param>
/// <param name="Heat">The heat's number; without it the heat that was in <paramref name="Furnace"/> then.</param>
/// <param name="Furnace">The furnace's code.</param>
/// <param name="Ladle">The ladle's code, for a sample of a treated ladle.</param>
/// <param name="TakenAt">When the coin was taken.</param>
/// <param name="By">Sign-in name of the person who measured: a fact has a person.</param>
/// <param name="IsMeanOnly">The one burn is the mean that the instrument reckoned.</param>
/// <param name="IsGrey">The coin broke grey.</param>
internal sealed record SampleRequest(
    string Id, string Instrument, string? Heat, string? Furnace, string? Ladle, SampleKind Kind, string? Coin, DateTimeOffset TakenAt, string By, string? Remarks,
    bool IsMeanOnly, bool IsGrey, IReadOnlyList<IReadOnlyList<ReadingInput>> Burns)
{
    public const int MostBurns = 20;

    /// <summary>The kind that is none of a heat: a check of the instrument.</summary>
    private const string Check = "controlSample";

    /// <summary>Code of the reference material; null for a sample of a heat.</summary>
    public string? Reference { get; private init; }

    /// <summary>Of a cup or a chill wedge, which has no burns.</summary>
    public IReadOnlyList<FigureInput> Figures { get; private init; } = [];

    /// <summary>A field that the kind has no use for is refused as one that nobody knows.</summary>
    public static SampleRequest Read(ObjectReader body)
    {
        var kind = body.NeededText("kind");
        if (!body.Has("takenAt")) body.Report("takenAt", "field.missing");
        if (kind == Check) return Of(body, SampleKind.Bath, null, null) with { Reference = body.NeededText("reference") };
        var (heat, furnace) = (body.Text("heat"), body.Text("furnace"));
        if (heat is null && furnace is null) body.Report("heat", "field.missing");
        if (!JsonNames.TryParse<SampleKind>(kind, out var known) && kind.Length > 0) body.Report("kind", "importKind.unknown", kind);
        var request = Of(body, known, heat, furnace) with { Ladle = body.Text("ladle"), Coin = body.Text("coin") };
        return SampleKinds.OfFigures.Contains(known) ? request : request with { IsGrey = body.Flag("greyFracture") ?? false };
    }

    private static SampleRequest Of(ObjectReader body, SampleKind kind, string? heat, string? furnace)
    {
        var isOfFigures = SampleKinds.OfFigures.Contains(kind);
        var isMeanOnly = !isOfFigures && (body.Flag("isMeanOnly") ?? false);
        var burns = isOfFigures ? [] : body.NeededList("burns", MostBurns, "sample.noBurns") ?? [];
        if (isMeanOnly && burns.Count > 1) body.Report("burns", "sample.meanIsOne");
        return new(
            body.NeededText("id"), body.NeededText("instrument"), heat, furnace, null, kind, null, body.Instant("takenAt") ?? default, body.NeededText("by"),
            body.Text("remarks"), isMeanOnly, false, [.. burns.Select(Burn)])
        {
            Figures = isOfFigures ? FigureReader.Read(body, kind) : [],
        };
    }

    /// <summary>What was measured, and the limits of detection of what lay under them.</summary>
    private static List<ReadingInput> Burn(ObjectReader burn)
    {
        var (values, below) = (burn.PerElement("percent", NumberRule.Percent), burn.PerElement("below", NumberRule.WantedPercent));
        foreach (var twice in values.Keys.Intersect(below.Keys)) burn.Report("below", "element.twice", twice.Symbol);
        if (values.Count + below.Count == 0) burn.Report("percent", "burn.empty");
        burn.RefuseTheRest();
        burn.Findings.AddRange(Analysis.Check(values.Concat(below.Where(b => !values.ContainsKey(b.Key))), burn.Path));
        return [.. values.Select(v => Reading(v.Key, v.Value, false)), .. below.Select(v => Reading(v.Key, v.Value, true))];
    }

    private static ReadingInput Reading(Element element, double percent, bool isBelow)
    {
        var text = percent.ToString("R", CultureInfo.InvariantCulture);
        return new(element.Symbol, percent, isBelow, isBelow ? $"<{text}" : text);
    }
}

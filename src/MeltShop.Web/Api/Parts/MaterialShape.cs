using System.ComponentModel;

namespace MeltShop.Web.Api.Parts;

/// <summary>How a material is written in a request: for the OpenAPI document, read by <see cref="MaterialReader"/>.</summary>
internal record MaterialShape
{
    [Description("Unique in the request; the answer names the material by it.")]
    public required string Code { get; init; }

    [Description("Price per 1000 kg weighed; zero and below are allowed.")]
    public required double PricePerTonne { get; init; }

    [Description("Mass percent by element symbol; an element absent is 0, iron is the remainder and never given.")]
    public required IReadOnlyDictionary<string, double> Analysis { get; init; }

    [Description("Standard deviation of a percent of the analysis, percentage points, 0 or more; 0 where absent.")]
    public IReadOnlyDictionary<string, double>? Spread { get; init; }

    [Description("Share of the weighed mass that melts in, over 0 to 100 %; 100 where absent.")]
    public double? MetallicYieldPercent { get; init; }

    [Description("Share of an element, after yield, that arrives in the melt, 0 to 100 %; 100 where absent.")]
    public IReadOnlyDictionary<string, double>? RecoveryPercent { get; init; }

    [Description("Stock, weighed kg; unlimited where absent.")]
    public double? AvailableKg { get; init; }

    [Description("Least weighed kg, compulsory; 0 where absent.")]
    public double? MinKg { get; init; }

    [Description("Greatest weighed kg; unlimited where absent.")]
    public double? MaxKg { get; init; }

    [Description("Least share of the total weighed mass, 0 to 100 %; 0 where absent.")]
    public double? MinPercent { get; init; }

    [Description("Greatest share of the total weighed mass, 0 to 100 %; 100 where absent.")]
    public double? MaxPercent { get; init; }

    [Description("Mass of one piece, kg, 0.001 at least: whole multiples only; any mass where absent.")]
    public double? PieceKg { get; init; }
}

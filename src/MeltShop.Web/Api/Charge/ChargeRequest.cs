using System.ComponentModel;
using MeltShop.Web.Api.Parts;

namespace MeltShop.Web.Api.Charge;

/// <summary>The question of the charge endpoint as the OpenAPI document shows it; read by <see cref="ChargeRequestReader"/>.</summary>
internal sealed record ChargeRequest
{
    [Description("Liquid mass wanted, heel included, kg, 0.001 at least.")]
    public required double MeltKg { get; init; }

    [Description("How much more liquid is acceptable, kg; 0 where absent.")]
    public double? MeltToleranceKg { get; init; }

    [Description("What is already in the furnace; an empty furnace where absent.")]
    public HeelShape? Heel { get; init; }

    [Description("What may be charged; one at least.")]
    public required IReadOnlyList<MaterialShape> Materials { get; init; }

    [Description("What the melt has to meet; an empty list is fine.")]
    public required IReadOnlyList<LimitShape> Limits { get; init; }

    [Description("One-sided confidence at which each bound holds given the spreads, 50 to below 100 %; 50, the mean alone, where absent.")]
    public double? ConfidencePercent { get; init; }
}

internal sealed record HeelShape
{
    [Description("Mass, kg; not over meltKg.")]
    public required double Kg { get; init; }

    [Description("Mass percent by element symbol; an element absent was not measured and is used as 0, which the answer says.")]
    public IReadOnlyDictionary<string, double>? Analysis { get; init; }
}

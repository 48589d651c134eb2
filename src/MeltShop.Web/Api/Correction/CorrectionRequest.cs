using System.ComponentModel;
using MeltShop.Web.Api.Parts;

namespace MeltShop.Web.Api.Correction;

/// <summary>The question of the correction endpoint as the OpenAPI document shows it; read by <see cref="CorrectionRequestReader"/>.</summary>
internal sealed record CorrectionRequest
{
    [Description("Mass of the bath as sampled, kg, 0.001 at least.")]
    public required double BathKg { get; init; }

    [Description("Temperature of the bath, °C, 1000 to 2000.")]
    public required double TemperatureC { get; init; }

    [Description("Mass percent by element symbol; an element absent was not measured and is used as 0, which the answer says.")]
    public required IReadOnlyDictionary<string, double> Analysis { get; init; }

    [Description("What may be added; one at least. Shares are of the total of the additions.")]
    public required IReadOnlyList<AdditionShape> Additions { get; init; }

    [Description("What the bath has to meet afterwards; an empty list is fine.")]
    public required IReadOnlyList<MarginLimitShape> Limits { get; init; }

    [Description("Greatest total weighed mass of the additions, kg; unlimited where absent.")]
    public double? MaxAdditionKg { get; init; }

    [Description("Greatest liquid mass afterwards, kg; unlimited where absent.")]
    public double? CapacityKg { get; init; }

    [Description("Greatest mass that may be tapped off first, kg; 0 where absent. A thousandth of the bath stays in any case.")]
    public double? MaxTapOffKg { get; init; }

    [Description("Cost of tapping off 1000 kg, more than 0; needed where maxTapOffKg is above 0.")]
    public double? TapOffCostPerTonne { get; init; }
}

internal sealed record AdditionShape : MaterialShape
{
    [Description("Heat to bring 1000 kg into solution, kWh; where absent, the line for cold iron and steel, which holds for C + Si under 10 % only.")]
    public double? HeatKWhPerTonne { get; init; }
}

internal sealed record MarginLimitShape : LimitShape
{
    [Description("How far inside the bounds the plan has to end, percentage points, 0 or more; 0 where absent.")]
    public double? Margin { get; init; }
}

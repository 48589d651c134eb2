using System.ComponentModel;
using MeltShop.Charging.Plans;
using MeltShop.Web.Api.Answering;
using MeltShop.Web.Api.Parts;

namespace MeltShop.Web.Api.Correction;

/// <summary>The answer of the correction endpoint.</summary>
internal sealed record CorrectionAnswer : PlanAnswer
{
    public CorrectionAnswer(CorrectionPlan correction)
        : base(correction.Plan)
    {
        var planned = LiquidKg is not null;
        TapOffKg = planned ? correction.TapOffKg : null;
        BathKgAfter = LiquidKg;
        TemperatureDropC = planned ? correction.TemperatureDropC : null;
        Why = correction.HeatUnknown.Count == 0 ? null : Words.For(new("temperatureDropC", "addition.heatUnknown", [.. correction.HeatUnknown]));
    }

    [Description("Mass to tap off first, kg.")]
    public double? TapOffKg { get; }

    [Description("Mass of the bath afterwards, kg.")]
    public double? BathKgAfter { get; }

    [Description("Fall of temperature with the power off, K, positive = cooler; null where it cannot be said.")]
    public double? TemperatureDropC { get; }

    [Description("Why the temperature cannot be said: names the additions whose heat is not known.")]
    public string? Why { get; }
}

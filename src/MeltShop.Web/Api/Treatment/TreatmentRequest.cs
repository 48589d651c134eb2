using System.ComponentModel;

namespace MeltShop.Web.Api.Treatment;

/// <summary>The question of the treatment endpoint as the OpenAPI document shows it; read by <see cref="TreatmentRequestReader"/>.</summary>
internal sealed record TreatmentRequest
{
    [Description("Mass of the iron in the ladle before treatment, kg, 0.001 at least.")]
    public required double IronKg { get; init; }

    [Description("Temperature of the iron at treatment, °C, 1000 to 2000.")]
    public required double TemperatureC { get; init; }

    [Description("Mass percent by element symbol, without magnesium; an element absent was not measured and is used as 0.")]
    public required IReadOnlyDictionary<string, double> BaseAnalysis { get; init; }

    [Description("Residual magnesium wanted at the end of the pour of the last mould, %, more than 0.")]
    public required double TargetMgPercent { get; init; }

    [Description("End of the pour of the last mould, minutes from the end of the reaction, 0 or more.")]
    public required double AtMinutes { get; init; }

    [Description("The treatment alloy.")]
    public required AlloyShape Alloy { get; init; }

    [Description("Magnesium found in the iron at minute 0, residual and bound by sulphur, per magnesium of the alloy, 0 to 100 %.")]
    public required double MgRecoveryPercent { get; init; }

    [Description("Temperature at which the recovery is quoted, °C: it then falls with the square of the temperature. Where absent it does not depend on it.")]
    public double? RecoveryTemperatureC { get; init; }

    [Description("How magnesium fades: exactly one of its fields.")]
    public required FadeShape Fade { get; init; }

    [Description("Sulphur left in the iron, %.")]
    public required double SulphurLeftPercent { get; init; }
}

internal sealed record AlloyShape
{
    [Description("Mass percent by element symbol; an element absent is 0.")]
    public required IReadOnlyDictionary<string, double> Analysis { get; init; }

    [Description("Share of an element that arrives, 0 to 100 %; 100 where absent. Never names Mg.")]
    public IReadOnlyDictionary<string, double>? RecoveryPercent { get; init; }
}

internal sealed record FadeShape
{
    [Description("Exponential: magnesium × exp(−k × minutes), k per minute, 0 or more.")]
    public double? PerMinute { get; init; }

    [Description("Linear: magnesium − a × minutes, a in % per minute, 0 or more, not below 0.")]
    public double? PercentPerMinute { get; init; }
}

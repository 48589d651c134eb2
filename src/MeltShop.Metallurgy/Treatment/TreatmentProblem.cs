using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>A ladle to be treated: which mass of alloy goes into the pocket?</summary>
public sealed record TreatmentProblem
{
    /// <summary>Iron to be treated, kg, over 0.</summary>
    public required double IronKg { get; init; }

    /// <summary>Treatment temperature, °C.</summary>
    public required double TemperatureC { get; init; }

    /// <summary>The iron before treatment, free of magnesium. Sulphur that was not measured counts as 0 and is named in the answer.</summary>
    public required Analysis BaseAnalysis { get; init; }

    /// <summary>Magnesium wanted at the end of the pour, %.</summary>
    public required double TargetMgPercent { get; init; }

    /// <summary>Minutes from the end of the reaction to the end of the pour of the last mould.</summary>
    public required double AtMinutes { get; init; }

    /// <summary>Cover steel that lies on the alloy and melts in; null where there is none.</summary>
    public TreatmentCover? Cover { get; init; }

    /// <summary>How it is treated.</summary>
    public required TreatmentRecipe Recipe { get; init; }

    /// <summary>
    /// What forbids an answer, by the paths of the calculation contract: <c>number.notFinite</c>, <c>mass.notPositive</c>, <c>temperature.notPositive</c>,
    /// <c>percent.negative</c>, <c>percent.over100</c>, <c>minutes.negative</c>, <c>fade.negative</c>, <c>base.magnesium</c>, <c>recovery.magnesium</c>.
    /// </summary>
    public IEnumerable<Finding> Check()
    {
        IEnumerable<Finding?> findings =
        [
            Positive("ironKg", IronKg, "mass.notPositive"),
            Positive("temperatureC", TemperatureC, "temperature.notPositive"),
            BaseAnalysis[Element.Mg] is > 0 ? new Finding("baseAnalysis.Mg", "base.magnesium", BaseAnalysis.OrZero(Element.Mg)) : null,
            Percent("targetMgPercent", TargetMgPercent),
            NotNegative("atMinutes", AtMinutes, "minutes.negative"),
            Percent("mgRecoveryPercent", Recipe.MgRecoveryPercent),
            Recipe.RecoveryTemperatureC is { } quoted ? Positive("recoveryTemperatureC", quoted, "temperature.notPositive") : null,
            Recipe.Fade switch
            {
                Fade.Exponential fade => NotNegative("fade.perMinute", fade.PerMinute, "fade.negative"),
                Fade.Linear fade => NotNegative("fade.percentPerMinute", fade.PercentPerMinute, "fade.negative"),
                _ => null,
            },
            Percent("sulphurLeftPercent", Recipe.SulphurLeftPercent),
            Recipe.Alloy.RecoveryPercent.ContainsKey(Element.Mg) ? new Finding("alloy.recoveryPercent.Mg", "recovery.magnesium") : null,
            .. Recipe.Alloy.RecoveryPercent.Where(r => r.Key != Element.Mg).Select(r => Percent($"alloy.recoveryPercent.{r.Key}", r.Value)),
        ];
        return findings.OfType<Finding>();
    }

    private static Finding? Positive(string path, double value, string code) =>
        !double.IsFinite(value) ? new(path, "number.notFinite", value) : value > 0 ? null : new(path, code, value);

    private static Finding? NotNegative(string path, double value, string code) =>
        !double.IsFinite(value) ? new(path, "number.notFinite", value) : value >= 0 ? null : new(path, code, value);

    private static Finding? Percent(string path, double value) =>
        NotNegative(path, value, "percent.negative") ?? (value > 100 ? new Finding(path, "percent.over100", value) : null);
}

namespace MeltShop.Metallurgy.Treatment;

/// <summary>
/// The answer as a band: what a pocket gives when the mass tapped, the recovery and the temperature are not what was planned.
/// One percent of error in the mass is frequent, five percent is normal (Cabanne, 2011).
/// </summary>
/// <param name="LeastMgPercent">Magnesium at the last mould when everything goes the wrong way, %.</param>
/// <param name="MostMgPercent">Magnesium at minute 0 when everything goes the other way, %.</param>
public sealed record TreatmentBand(double LeastMgPercent, double MostMgPercent)
{
    /// <summary>The band of a pocket.</summary>
    /// <param name="problem">The plan: mass, temperature, base iron, recipe, minutes.</param>
    /// <param name="alloyKg">Alloy in the pocket, kg.</param>
    /// <param name="massPercent">Mass tapped may be so much more or less, %, 0 to under 100.</param>
    /// <param name="recoveryPercent">Least and most recovery, %.</param>
    /// <param name="temperatureC">Least and most treatment temperature, °C; it matters where the recipe says at which its recovery was found.</param>
    public static TreatmentBand Of(
        TreatmentProblem problem, double alloyKg, double massPercent, (double Least, double Most) recoveryPercent, (double Least, double Most) temperatureC)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return new(
            Treated(1 + massPercent / 100, recoveryPercent.Least, temperatureC.Most).MgPercentAt(problem.AtMinutes),
            Treated(1 - massPercent / 100, recoveryPercent.Most, temperatureC.Least).MgPercent);

        TreatedIron Treated(double mass, double recovery, double temperature) => MagnesiumTreatment.After(
            problem with { TemperatureC = temperature, Recipe = problem.Recipe with { MgRecoveryPercent = recovery } }, alloyKg, mass * problem.IronKg);
    }
}

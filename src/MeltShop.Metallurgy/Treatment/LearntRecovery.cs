namespace MeltShop.Metallurgy.Treatment;

/// <summary>
/// What a shop's own ladles say of the recovery of magnesium: the mean and scatter of the recoveries that explain what was measured. It is
/// shown beside the published range; nobody's figure is changed by it.
/// </summary>
/// <param name="Count">Ladles that it was learnt from.</param>
/// <param name="MeanPercent">Mean recovery, %.</param>
/// <param name="DeviationPercent">Standard deviation of one ladle (n − 1), percentage points; null for a single ladle.</param>
/// <param name="LeastPercent">Least of them, %.</param>
/// <param name="MostPercent">Most of them, %.</param>
public sealed record LearntRecovery(int Count, double MeanPercent, double? DeviationPercent, double LeastPercent, double MostPercent)
{
    private const double GreatestPercent = 150;
    private const int Halvings = 60;

    /// <summary>Null where there is none to learn from.</summary>
    public static LearntRecovery? Of(IReadOnlyList<double> percents)
    {
        ArgumentNullException.ThrowIfNull(percents);
        if (percents.Count == 0) return null;
        var mean = percents.Average();
        double? deviation = percents.Count > 1 ? Math.Sqrt(percents.Sum(p => (p - mean) * (p - mean)) / (percents.Count - 1)) : null;
        return new(percents.Count, mean, deviation, percents.Min(), percents.Max());
    }

    /// <summary>The recovery with which the treatment balance gives what was measured: the balance, solved for its recovery.</summary>
    /// <param name="problem">The treatment: base iron, temperature, alloy, fade, sulphur left; its own recovery is not used.</param>
    /// <param name="alloyKg">Alloy that was in the pocket, kg, over 0.</param>
    /// <param name="ironKg">Iron that was tapped, kg, over 0.</param>
    /// <param name="minutes">Minutes from the end of the reaction to the sample, 0 or more.</param>
    /// <param name="measuredMgPercent">Residual magnesium of the sample, %.</param>
    /// <returns>%, at the temperature that the recipe's recovery is quoted for; null where the measured magnesium is 0, or no recovery explains it.</returns>
    public static double? Percent(TreatmentProblem problem, double alloyKg, double ironKg, double minutes, double measuredMgPercent)
    {
        ArgumentNullException.ThrowIfNull(problem);
        double Mg(double recovery) =>
            MagnesiumTreatment.After(problem with { Recipe = problem.Recipe with { MgRecoveryPercent = recovery } }, alloyKg, ironKg).MgPercentAt(minutes);
        if (!(measuredMgPercent > 0) || Mg(GreatestPercent) < measuredMgPercent) return null;
        var (low, high) = (0.0, GreatestPercent);
        for (var n = 0; n < Halvings; n++)
        {
            var middle = (low + high) / 2;
            if (Mg(middle) < measuredMgPercent) low = middle;
            else high = middle;
        }

        return high;
    }
}

using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>An exponential fade learnt from samples of one ladle.</summary>
/// <param name="Fade">The fade.</param>
/// <param name="StandardError">Standard error of k, 1/min; null for two samples.</param>
/// <param name="Samples">Samples it rests on.</param>
public sealed record FadeFit(Fade.Exponential Fade, double? StandardError, int Samples)
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "fade-fit",
        Name = "Fade rate from samples",
        Sentence = "The rate k of a ladle from residual magnesium over time.",
        Expression = "k = −Σ(t − t̄)(ln Mg − mean)/Σ(t − t̄)²",
        Symbols = [new("t", "time after the end of the reaction", "min"), new("Mg", "residual magnesium", "%")],
        Unit = "1/min",
        Sources = [Bibliography.LeastSquares],
        Range = "Two samples or more of one ladle, all a minute or more after the reaction.",
        Code = $"{nameof(FadeFit)}.{nameof(Of)}",
        Example = new("0.0450 at 0 min, 0.0350 at 10 min → 0.0251 (by hand)", () => Of([(0, 0.0450), (10, 0.0350)])!.Fade.PerMinute, 0.02513, 0.000005),
    };

    /// <summary>Fits a fade.</summary>
    /// <param name="samples">Minutes after the reaction and residual magnesium, %.</param>
    /// <returns>The fit; null for fewer than two times, magnesium of 0, or magnesium that does not fall.</returns>
    public static FadeFit? Of(IReadOnlyList<(double Minutes, double MgPercent)> samples)
    {
        ArgumentNullException.ThrowIfNull(samples);
        if (samples.Count < 2 || samples.Any(s => s.MgPercent <= 0)) return null;
        var (t, y) = (samples.Average(s => s.Minutes), samples.Average(s => Math.Log(s.MgPercent)));
        var squares = samples.Sum(s => (s.Minutes - t) * (s.Minutes - t));
        var slope = samples.Sum(s => (s.Minutes - t) * (Math.Log(s.MgPercent) - y)) / squares;
        if (!(slope < 0)) return null;
        var residuals = samples.Sum(s => Math.Pow(Math.Log(s.MgPercent) - y - slope * (s.Minutes - t), 2));
        double? error = samples.Count > 2 ? Math.Sqrt(residuals / (samples.Count - 2) / squares) : null;
        return new(new Fade.Exponential(-slope), error, samples.Count);
    }
}

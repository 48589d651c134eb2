using MathNet.Numerics;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>An inoculation fade learnt from a shop's nodule counts over the minutes since the last inoculation, same section.</summary>
/// <param name="Fade">The fade.</param>
/// <param name="CountAtStart">Nodules per mm² at minute 0 by the fit.</param>
/// <param name="Scatter">Standard deviation of the counts about the fit (n − 3), per mm².</param>
/// <param name="Samples">Counts it rests on.</param>
public sealed record InoculationFadeFit(InoculationFade Fade, double CountAtStart, double Scatter, int Samples)
{
    /// <summary>Fewest counts: three numbers are fitted, and a scatter must be left.</summary>
    public const int FewestSamples = 4;

    private const double LeastMinutes = 0.5, MostMinutes = 60;

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "inoculation-fade-fit",
        Name = "Inoculation fade from nodule counts",
        Sentence = "The two numbers of the fade estimate, from counts of one section poured at different minutes.",
        Expression = "N = N₀ (E_∞ + (1 − E_∞) exp(−t/τ)), least squares, τ 0.5 to 60 min",
        Symbols = [new("t", "since the last inoculation", "min"), new("N", "nodule count", "1/mm²")],
        Unit = "min",
        Sources = [Bibliography.LeastSquares],
        Range = "Four counts or more at three times or more, one section, one inoculant, counted alike. No fit where counts do not fall: then no fade was seen.",
        Doubt = "The shape is an estimate. One published study found counts rising up to 16 minutes.",
        Code = $"{nameof(InoculationFadeFit)}.{nameof(Of)}",
        Example = new("300 · (0.4 + 0.6 exp(−t/5)) at 0, 3, 6, 10, 15 min → τ 5 min (by hand)",
            () => Of([(0, 300), (3, 218.7861), (6, 174.2150), (10, 144.3604), (15, 128.9617)])!.Fade.Minutes, 5, 0.001),
    };

    /// <summary>Fits a fade.</summary>
    /// <param name="samples">Minutes since the last inoculation, 0 or more, and nodules per mm².</param>
    /// <returns>The fit; null for too few counts or times, counts that do not fall, or counts that fall in a way this shape cannot follow.</returns>
    public static InoculationFadeFit? Of(IReadOnlyList<(double Minutes, double Count)> samples)
    {
        ArgumentNullException.ThrowIfNull(samples);
        if (samples.Count < FewestSamples || samples.Select(s => s.Minutes).Distinct().Count() < 3) return null;
        var minutes = FindMinimum.OfScalarFunction(tau => Line(samples, tau).Squares, Start(samples));
        if (!(minutes is > LeastMinutes and < MostMinutes)) return null;
        var (lasting, passing, squares) = Line(samples, minutes);
        return passing > 0 && lasting >= 0
            ? new(new(minutes, lasting / (lasting + passing)), lasting + passing, Math.Sqrt(squares / (samples.Count - 3)), samples.Count)
            : null;
    }

    // The best of a coarse row: the sum of squares has one valley there, which the search then goes down.
    private static double Start(IReadOnlyList<(double Minutes, double Count)> samples) =>
        Enumerable.Range(0, 60).Select(i => LeastMinutes * Math.Pow(MostMinutes / LeastMinutes, i / 59.0)).MinBy(tau => Line(samples, tau).Squares);

    // For a given time the count is a straight line in exp(−t/τ).
    private static (double Lasting, double Passing, double Squares) Line(IReadOnlyList<(double Minutes, double Count)> samples, double tau)
    {
        var shape = samples.Select(s => Math.Exp(-s.Minutes / tau)).ToArray();
        var counts = samples.Select(s => s.Count).ToArray();
        var (lasting, passing) = Fit.Line(shape, counts);
        return (lasting, passing, shape.Zip(counts, (x, n) => Math.Pow(n - lasting - passing * x, 2)).Sum());
    }
}

using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>A shop's own line between carbon equivalent and liquidus: every cup stand, wire and mould reads a little differently.</summary>
/// <param name="InterceptC">Temperature at CEL 0, °C.</param>
/// <param name="SlopeCPerPercent">Fall of temperature per percent, °C, positive.</param>
/// <param name="ScatterC">Standard deviation of the pairs about the line (n − 2), °C; null for the printed line.</param>
/// <param name="Pairs">Pairs it rests on; 0 for the printed line.</param>
public sealed record LiquidusCalibration(double InterceptC, double SlopeCPerPercent, double? ScatterC, int Pairs)
{
    /// <summary>Fewest pairs for a line with a scatter.</summary>
    public const int FewestPairs = 3;

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "liquidus-calibration",
        Name = "Liquidus calibration",
        Sentence = "Slope and intercept from pairs of spectrometer carbon equivalent and cup liquidus.",
        Expression = "slope = Σ(x − x̄)(y − ȳ)/Σ(x − x̄)², intercept = ȳ − slope · x̄",
        Symbols = [new("x", "liquidus carbon equivalent", "%"), new("y", "liquidus temperature", "°C")],
        Unit = "°C/%",
        Sources = [Bibliography.LeastSquares, Bibliography.Heine],
        Range = "Three pairs or more of different carbon equivalents; good for the range that the pairs cover.",
        Code = $"{nameof(LiquidusCalibration)}.{nameof(Fit)}",
        Example = new("eight pairs of Heine's table → slope 97.20, intercept 1568.56 (by hand)",
            () => Fit([(2.25, 1350), (2.76, 1300), (3.28, 1250), (3.79, 1200), (4.26, 1154), (4.30, 1150.5), (4.33, 1148), (4.34, 1147)])!.SlopeCPerPercent,
            97.20, 0.005),
    };

    /// <summary>The printed line of Heine, 1569 − 97.3·CEL.</summary>
    public static LiquidusCalibration Printed { get; } = new(1569, 97.3, null, 0);

    /// <summary>Fits a line to pairs.</summary>
    /// <param name="pairs">Carbon equivalent (%) and liquidus (°C).</param>
    /// <returns>The line; null for fewer than three pairs, equal carbon equivalents, or a line that does not fall.</returns>
    public static LiquidusCalibration? Fit(IReadOnlyList<(double CarbonEquivalentPercent, double LiquidusC)> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        if (pairs.Count < FewestPairs) return null;
        var (x, y) = (pairs.Average(p => p.CarbonEquivalentPercent), pairs.Average(p => p.LiquidusC));
        var squares = pairs.Sum(p => (p.CarbonEquivalentPercent - x) * (p.CarbonEquivalentPercent - x));
        var slope = pairs.Sum(p => (p.CarbonEquivalentPercent - x) * (p.LiquidusC - y)) / squares;
        if (!(slope < 0)) return null;
        var residuals = pairs.Sum(p => Math.Pow(p.LiquidusC - y - slope * (p.CarbonEquivalentPercent - x), 2));
        return new(y - slope * x, -slope, Math.Sqrt(residuals / (pairs.Count - 2)), pairs.Count);
    }

    /// <summary>Liquidus temperature of a carbon equivalent, °C.</summary>
    public double TemperatureC(double carbonEquivalentPercent) => InterceptC - SlopeCPerPercent * carbonEquivalentPercent;

    /// <summary>Carbon equivalent from a cup's liquidus, %.</summary>
    public double CarbonEquivalentPercent(double liquidusC) => (InterceptC - liquidusC) / SlopeCPerPercent;
}

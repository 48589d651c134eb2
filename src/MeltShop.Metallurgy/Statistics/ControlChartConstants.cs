using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Statistics;

/// <summary>Factors of control charts for mean and range, subgroups of 2 to 10.</summary>
public static class ControlChartConstants
{
    // Mean and standard deviation of the range of n standard normal readings.
    private static readonly (double Mean, double Deviation)[] Range =
    [
        (1.12838, 0.85250), (1.69257, 0.88837), (2.05875, 0.87981), (2.32593, 0.86408), (2.53441, 0.84804),
        (2.70436, 0.83321), (2.84720, 0.81984), (2.97003, 0.80783), (3.07751, 0.79705),
    ];

    /// <summary>The record of these constants.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "control-chart-constants",
        Name = "Control-chart constants",
        Sentence = "What turns a mean range into three standard deviations of the mean or of the range.",
        Expression = "A2 = 3/(d2 √n), D3 = max(0, 1 − 3 d3/d2), D4 = 1 + 3 d3/d2",
        Symbols = [new("d2, d3", "mean and standard deviation of the range of n standard normal readings", "1"), new("n", "readings in a subgroup", "1")],
        Unit = "1",
        Sources = [Bibliography.Iso7870],
        Range = "Subgroups of 2 to 10, readings near normal, each subgroup within a short time.",
        Code = $"{nameof(ControlChartConstants)}.{nameof(MeanFactor)}",
        Example = new("n = 5 → A2 0.577 (ISO 7870-2)", () => MeanFactor(5), 0.577, 0.0005),
    };

    /// <summary>d2: mean range over standard deviation.</summary>
    /// <param name="readings">Readings in a subgroup, 2 to 10.</param>
    public static double RangePerDeviation(int readings) => At(readings).Mean;

    /// <summary>A2: limits of the mean are ± A2 × mean range.</summary>
    /// <param name="readings">Readings in a subgroup, 2 to 10.</param>
    public static double MeanFactor(int readings) => 3 / (At(readings).Mean * Math.Sqrt(readings));

    /// <summary>D3: lower limit of the range over the mean range.</summary>
    /// <param name="readings">Readings in a subgroup, 2 to 10.</param>
    public static double RangeLowerFactor(int readings) => Math.Max(0, 1 - 3 * At(readings).Deviation / At(readings).Mean);

    /// <summary>D4: upper limit of the range over the mean range.</summary>
    /// <param name="readings">Readings in a subgroup, 2 to 10.</param>
    public static double RangeUpperFactor(int readings) => 1 + 3 * At(readings).Deviation / At(readings).Mean;

    private static (double Mean, double Deviation) At(int readings) => readings is >= 2 and <= 10
        ? Range[readings - 2]
        : throw new ArgumentOutOfRangeException(nameof(readings), readings, "A subgroup holds 2 to 10 readings.");
}

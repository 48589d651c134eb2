using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Statistics;

/// <summary>Replicate sparks of one sample: mean, scatter, and which burn to look at again.</summary>
public static class ReplicateBurns
{
    /// <summary>Smallest difference that counts, percentage points: decimal readings differ by more, rounding of a double by less.</summary>
    private const double Rounding = 1e-9;

    /// <summary>95 % points of the studentised range with known standard deviation, for n = 2 to 6.</summary>
    private static readonly double[] RangeFactors = [2.772, 3.314, 3.633, 3.858, 4.030];

    /// <summary>The record of the range factor.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "range-factor",
        Name = "Acceptable range of replicates",
        Sentence = "The range that n readings exceed once in twenty samples when their repeatability is known.",
        Expression = "range ≤ f(n) · s_r, f = 2.772, 3.314, 3.633, 3.858, 4.030 for n = 2 … 6",
        Symbols = [new("n", "readings", "1"), new("s_r", "repeatability as standard deviation", "%")],
        Unit = "1",
        Sources = [Bibliography.Iso5725],
        Range = "n = 2 to 6; beyond that the scatter of the readings themselves decides (Grubbs).",
        Code = $"{nameof(ReplicateBurns)}.{nameof(RangeFactor)}",
        Example = new("two readings → 2.8 (ISO 5725-6, rounded)", () => RangeFactor(2)!.Value, 2.8, 0.05),
    };

    /// <summary>Range limit over repeatability, 95 %.</summary>
    /// <param name="readings">Number of readings.</param>
    /// <returns>The factor; null outside 2 to 6.</returns>
    public static double? RangeFactor(int readings) => readings is >= 2 and <= 6 ? RangeFactors[readings - 2] : null;

    /// <summary>Evaluates every element that a burn holds, in report order.</summary>
    /// <param name="burns">The burns in the order of sparking; an element absent from a burn is not counted for that burn.</param>
    /// <param name="repeatability">Known standard deviations of repeatability, percentage points; may name some elements only.</param>
    public static IReadOnlyList<BurnEvaluation> Evaluate(IReadOnlyList<Analysis> burns, IReadOnlyDictionary<Element, double>? repeatability = null)
    {
        ArgumentNullException.ThrowIfNull(burns);
        return [.. burns.SelectMany(b => b.Elements).Distinct().Order().Select(element => Evaluate(element, burns, repeatability))];
    }

    private static BurnEvaluation Evaluate(Element element, IReadOnlyList<Analysis> burns, IReadOnlyDictionary<Element, double>? repeatability)
    {
        var readings = burns.Select((burn, index) => (Burn: index, Percent: burn[element])).Where(r => r.Percent is not null)
            .Select(r => new Reading(r.Burn, r.Percent!.Value)).ToList();
        var mean = readings.Average(r => r.Percent);
        double? deviation = readings.Count > 1 ? Math.Sqrt(readings.Sum(r => (r.Percent - mean) * (r.Percent - mean)) / (readings.Count - 1)) : null;
        var range = readings.Max(r => r.Percent) - readings.Min(r => r.Percent);

        IReadOnlyList<SuspectBurn> suspects = [];
        Finding? why = null;
        BurnTest? test = null;
        if (readings.Count == 1) why = new Finding(element.Symbol, "burns.single");
        else if (RangeFactor(readings.Count) is { } factor && repeatability?.TryGetValue(element, out var known) == true)
        {
            test = BurnTest.Range;
            suspects = range > factor * known + Rounding ? [.. Farthest(readings, Median(readings)).Select(r => new SuspectBurn(r.Burn, BurnTest.Range, 5))] : [];
        }
        else if (readings.Count < Grubbs.FewestReadings) why = new Finding(element.Symbol, "burns.tooFew", readings.Count, Grubbs.FewestReadings);
        else
        {
            test = BurnTest.Grubbs;
            suspects = ByGrubbs(readings, mean, deviation!.Value);
        }

        return new BurnEvaluation(element, mean, deviation, readings.Count, range, suspects, why) { Test = test };
    }

    private static IReadOnlyList<SuspectBurn> ByGrubbs(List<Reading> readings, double mean, double deviation)
    {
        // Equal readings may differ by the rounding of their mean: that is a standard deviation of 0 too.
        if (deviation < Rounding) return [];
        var farthest = Farthest(readings, mean);
        var distance = Math.Abs(farthest[0].Percent - mean) / deviation;
        int? level = distance > Grubbs.Critical(readings.Count, 0.01) ? 1 : distance > Grubbs.Critical(readings.Count, 0.05) ? 5 : null;
        return level is { } percent ? [.. farthest.Select(r => new SuspectBurn(r.Burn, BurnTest.Grubbs, percent))] : [];
    }

    private static List<Reading> Farthest(List<Reading> readings, double centre)
    {
        var most = readings.Max(r => Math.Abs(r.Percent - centre));
        return readings.FindAll(r => Math.Abs(r.Percent - centre) >= most - Rounding);
    }

    private static double Median(List<Reading> readings)
    {
        var sorted = readings.Select(r => r.Percent).Order().ToArray();
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }

    private readonly record struct Reading(int Burn, double Percent);
}

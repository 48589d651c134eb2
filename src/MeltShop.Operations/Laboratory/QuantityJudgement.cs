using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Route;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;

namespace MeltShop.Operations.Laboratory;

/// <summary>How a quantity of a sample stands to its window.</summary>
public enum QuantityStanding
{
    In,
    Low,
    High,

    /// <summary>Inside the guard band about a limit.</summary>
    TooClose,

    /// <summary>An element that it needs was not measured.</summary>
    NotMeasured,

    /// <summary>It rests on a carbon that the spark cannot tell, or its formula says nothing of such an iron.</summary>
    NotJudged,
}

/// <summary>A quantity of a sample against the window of its step.</summary>
/// <param name="Value">Over the burns that count; null where it was not measured.</param>
/// <param name="Width">Guard band, in its unit; where the verdict hangs on what lies under the limit of detection, at least that; null where nothing says one.</param>
/// <param name="IsSet">The band is the metallurgist's; false where it is the 95 % interval of the burns.</param>
/// <param name="Distance">To the nearer limit in repeatabilities of the instrument, negative outside; null where that is not known.</param>
public sealed record QuantityJudgement(WindowView Window, double? Value, double? Width, bool IsSet, double? Distance, QuantityStanding Standing)
{
    /// <summary>Fewer burns say too little about their own scatter.</summary>
    private const int FewestBurns = 3;

    private const double Tail = 0.025;

    /// <summary>Standard deviation of one result of the instrument, in the quantity's unit; null where that is not known.</summary>
    public double? Repeatability { get; init; }

    /// <summary>What was not measured and keeps it from being judged.</summary>
    public IReadOnlyList<Element> Missing { get; init; } = [];

    /// <summary>What was not measured and counted as 0 although it enters.</summary>
    public IReadOnlyList<Element> TakenAsZero { get; init; } = [];

    /// <summary>The window that a kind of sample is held against.</summary>
    public static WindowStage StageOf(SampleKind kind) => SampleKinds.Treated.Contains(kind) ? WindowStage.Poured : WindowStage.Furnace;

    /// <summary>One for each row of the step's window that has a least or a most; none for a cup or a wedge.</summary>
    public static IReadOnlyList<QuantityJudgement> Of(SampleView sample, GradeView grade)
    {
        ArgumentNullException.ThrowIfNull(sample);
        ArgumentNullException.ThrowIfNull(grade);
        return Of(sample, grade.At(StageOf(sample.Kind)));
    }

    /// <summary>The same against windows that somebody else chose.</summary>
    public static IReadOnlyList<QuantityJudgement> Of(SampleView sample, IEnumerable<WindowView> windows)
    {
        ArgumentNullException.ThrowIfNull(sample);
        if (SampleKinds.OfFigures.Contains(sample.Kind)) return [];
        var burns = sample.Burns.Where(b => !b.SetAside)
            .Select(b => Analysis.Of(b.Readings.Select(r => KeyValuePair.Create(r.Element, r.Percent)))).ToList();
        return [.. windows.Where(w => w.Least is not null || w.Most is not null).Select(w => Of(w, sample, burns))];
    }

    /// <summary>
    /// How far one result of an instrument scatters about what an iron has of a quantity, as a standard deviation in its unit; null where that is
    /// not known, and where the quantity does not move with what the instrument measures.
    /// </summary>
    public static double? RepeatabilityAt(WindowQuantity quantity, Analysis iron, InstrumentView? instrument)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        ArgumentNullException.ThrowIfNull(iron);
        return quantity.Missing(iron).Count > 0 || !quantity.IsMeantFor(iron) ? null : Whole(quantity.Slopes(iron).Where(slope => iron.Has(slope.Key)).ToDictionary(), instrument, of => of.Repeatability) is > 0 and var one ? one : null;
    }

    private static QuantityJudgement Of(WindowView window, SampleView sample, List<Analysis> burns)
    {
        var quantity = WindowQuantity.Find(window.Quantity) ?? throw new InvalidOperationException($"{window.Quantity} was not checked before it was kept.");
        var mean = sample.Analysis();
        if (quantity.Missing(mean) is { Count: > 0 } missing) return new(window, null, null, false, null, QuantityStanding.NotMeasured) { Missing = missing };
        if (!quantity.IsMeantFor(mean)) return new(window, null, null, false, null, QuantityStanding.NotJudged);
        var value = quantity.Value(mean);
        if (quantity.Elements.Contains(Element.C) && !sample.CarbonIsJudged) return new(window, value, null, false, null, QuantityStanding.NotJudged);

        // What was not measured has no scatter that anybody knows.
        var slopes = quantity.Slopes(mean).Where(slope => mean.Has(slope.Key)).ToDictionary();
        var repeatability = Whole(slopes, sample.Instrument, of => of.Repeatability);
        var set = Whole(slopes, sample.Instrument, of => of.GuardFactor is { } factor && of.Repeatability is { } one ? GuardBand.WidthByFactor(one, Math.Max(1, burns.Count), factor) : null);
        var width = set ?? (sample.IsMeanOnly ? null : Interval([.. burns.Where(b => quantity.Missing(b).Count == 0).Select(quantity.Value)]));
        var standing = StandingOf(value, window, width);
        if (Unseen(slopes, sample) is var unseen and not 0 && StandingOf(value - unseen, window, width) != standing)
        {
            (standing, width) = (QuantityStanding.TooClose, Math.Max(width ?? 0, Math.Abs(unseen)));
        }

        // A flat curve has no distance in repeatabilities: no scatter of the elements moves it.
        return new(window, value, width, set is not null, repeatability is > 0 and var unit ? ToLimit(value, window) / unit : null, standing)
        {
            TakenAsZero = quantity.TakenAsZero(mean),
            Repeatability = repeatability is > 0 ? repeatability : null,
        };
    }

    private static QuantityStanding StandingOf(double value, WindowView window, double? width) => GuardBand.Decide(value, window.Least, window.Most, width ?? 0) switch
    {
        LimitVerdict.In => QuantityStanding.In,
        LimitVerdict.TooClose => QuantityStanding.TooClose,
        _ => value < window.Least ? QuantityStanding.Low : QuantityStanding.High,
    };

    /// <summary>What the value would lose without its readings below detection: they count as their limit of detection, and may be anything down to 0.</summary>
    private static double Unseen(IReadOnlyDictionary<Element, double> terms, SampleView sample)
    {
        var readings = sample.Burns.Where(b => !b.SetAside).SelectMany(b => b.Readings).ToLookup(r => r.Element);
        return terms.Where(term => double.IsFinite(term.Value)).Sum(term => readings[term.Key].Where(r => r.BelowDetection).Sum(r => r.Percent) * term.Value / Math.Max(1, readings[term.Key].Count()));
    }

    private static double ToLimit(double value, WindowView window) =>
        Math.Min(value - window.Least ?? double.PositiveInfinity, window.Most - value ?? double.PositiveInfinity);

    /// <summary>Independent scatters of the elements add as squares; null where one of them is not known.</summary>
    private static double? Whole(IReadOnlyDictionary<Element, double> terms, InstrumentView? instrument, Func<InstrumentElementView, double?> scatter)
    {
        var squares = 0.0;
        foreach (var (element, factor) in terms)
        {
            if (instrument?.Of(element) is not { } known || scatter(known) is not { } one) return null;
            squares += factor * factor * one * one;
        }

        // Beside the end of a formula's range there is no slope.
        return double.IsFinite(squares) ? Math.Sqrt(squares) : null;
    }

    /// <summary>Half the 95 % interval of the mean, from the scatter of the burns themselves; null where the formula says nothing of one of them.</summary>
    private static double? Interval(List<double> values)
    {
        if (values.Count < FewestBurns || !values.TrueForAll(double.IsFinite)) return null;
        var mean = values.Average();
        var deviation = Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1));
        return StudentT.UpperQuantile(Tail, values.Count - 1) * deviation / Math.Sqrt(values.Count);
    }
}

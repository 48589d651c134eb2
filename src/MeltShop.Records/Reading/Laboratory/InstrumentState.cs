using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>What a control sample says of its instrument.</summary>
/// <param name="Judged">Elements that had control limits.</param>
/// <param name="Outside">Those of them beyond their action limits.</param>
/// <param name="Moved">Those that complete another of the usual patterns.</param>
public sealed record ControlVerdict(
    long ControlSampleId, DateTimeOffset At, IReadOnlyList<Element> Judged, IReadOnlyList<Element> Outside, IReadOnlyList<Element> Moved)
{
    public bool IsJudged => Judged.Count > 0;

    /// <summary>It was judged, and every element was inside its action limits.</summary>
    public bool IsGood => IsJudged && Outside.Count == 0;
}

/// <summary>
/// An instrument by its control samples, judged by the limits as they stand now. An element is as its own last check found it: one on a
/// material that does not hold it says nothing of it.
/// </summary>
/// <param name="Verdicts">In order of time.</param>
public sealed record InstrumentState(InstrumentView Instrument, IReadOnlyList<ControlVerdict> Verdicts)
{
    public static InstrumentState Of(InstrumentView instrument, IReadOnlyList<ControlSampleView> samples, IReadOnlyList<ControlSeries> series)
    {
        ArgumentNullException.ThrowIfNull(samples);
        ArgumentNullException.ThrowIfNull(series);
        var found = (
            from one in series
            from signal in one.Signals
            select (one.Points[signal.Point].ControlSampleId, signal.Rule, one.Certified.Element)).ToLookup(f => f.ControlSampleId);
        var judged = (
            from one in series
            where one.Limits is not null
            from point in one.Points
            select (point.ControlSampleId, one.Certified.Element)).ToLookup(f => f.ControlSampleId, f => f.Element);
        return new(instrument,
        [
            .. samples.Select(sample => new ControlVerdict(
                sample.Id, sample.Origin.ObservedAt, [.. judged[sample.Id].Distinct().Order()],
                [.. found[sample.Id].Where(f => f.Rule == RunRule.OneBeyondThree).Select(f => f.Element).Distinct().Order()],
                [.. found[sample.Id].Where(f => f.Rule != RunRule.OneBeyondThree).Select(f => f.Element).Distinct().Order()])),
        ]);
    }

    /// <summary>How the instrument stands after all its checks; null where there was none.</summary>
    public ControlVerdict? Last => At(DateTimeOffset.MaxValue);

    /// <summary>
    /// How it stood at a time: the last check then or before; or the last bad one where an element that it found outside was not found
    /// good since, with all such elements. Null where there was none.
    /// </summary>
    public ControlVerdict? At(DateTimeOffset time)
    {
        var until = Verdicts.TakeWhile(v => v.At <= time).Reverse().ToList();
        if (until.Count == 0) return null;
        var own = until.SelectMany(v => v.Judged.Select(element => (Element: element, Verdict: v))).DistinctBy(of => of.Element).ToList();
        var outside = own.FindAll(of => of.Verdict.Outside.Contains(of.Element));
        if (outside.Count > 0) return outside[0].Verdict with { Outside = [.. outside.Select(of => of.Element).Order()] };
        var moved = own.FindAll(of => of.Verdict.Moved.Contains(of.Element));
        return moved.Count > 0 ? moved[0].Verdict with { Moved = [.. moved.Select(of => of.Element).Order()] } : until[0];
    }

    /// <summary>The times that bad checks throw doubt on, even where a good one ended them, the latest first.</summary>
    public IReadOnlyList<DoubtedTime> Doubts =>
    [
        .. Verdicts.SelectMany(v => v.Outside).Distinct().SelectMany(DoubtsOf).GroupBy(d => (d.Since, d.Until), d => d.Element)
            .OrderByDescending(g => g.Key.Until ?? DateTimeOffset.MaxValue).ThenByDescending(g => g.Key.Since)
            .Select(g => new DoubtedTime(g.Key.Since, g.Key.Until) { Elements = [.. g.Order()] }),
    ];

    /// <summary>Each stretch of bad checks of an element, once.</summary>
    private IEnumerable<(DateTimeOffset? Since, DateTimeOffset? Until, Element Element)> DoubtsOf(Element element)
    {
        DateTimeOffset? good = null;
        var isBad = false;
        foreach (var verdict in Verdicts.Where(v => v.Judged.Contains(element)))
        {
            if (verdict.Outside.Contains(element)) isBad = true;
            else
            {
                if (isBad) yield return (good, verdict.At, element);
                (good, isBad) = (verdict.At, false);
            }
        }

        if (isBad) yield return (good, null, element);
    }
}

/// <summary>What was measured in it may be wrong: from the last good check before a bad one to the first good one after it.</summary>
/// <param name="Since">Null where no check before was good.</param>
/// <param name="Until">Null where none after it was good yet.</param>
public sealed record DoubtedTime(DateTimeOffset? Since, DateTimeOffset? Until)
{
    /// <summary>In report order.</summary>
    public IReadOnlyList<Element> Elements { get; init; } = [];
}

using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>What a control sample says of its instrument.</summary>
/// <param name="IsJudged">At least one element had control limits.</param>
/// <param name="Outside">Elements beyond their action limits.</param>
/// <param name="Moved">Elements that complete another of the usual patterns.</param>
public sealed record ControlVerdict(long ControlSampleId, DateTimeOffset At, bool IsJudged, IReadOnlyList<Element> Outside, IReadOnlyList<Element> Moved)
{
    /// <summary>It was judged, and every element was inside its action limits.</summary>
    public bool IsGood => IsJudged && Outside.Count == 0;
}

/// <summary>An instrument by its control samples, judged by the limits as they stand now.</summary>
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
        var judged = series.Where(s => s.Limits is not null).SelectMany(s => s.Points.Select(p => p.ControlSampleId)).ToHashSet();
        return new(instrument,
        [
            .. samples.Select(sample => new ControlVerdict(
                sample.Id, sample.Origin.ObservedAt, judged.Contains(sample.Id),
                [.. found[sample.Id].Where(f => f.Rule == RunRule.OneBeyondThree).Select(f => f.Element).Distinct().Order()],
                [.. found[sample.Id].Where(f => f.Rule != RunRule.OneBeyondThree).Select(f => f.Element).Distinct().Order()])),
        ]);
    }

    /// <summary>The last check of all; null where there was none.</summary>
    public ControlVerdict? Last => Verdicts.Count == 0 ? null : Verdicts[^1];

    /// <summary>The last check before a time, or at it.</summary>
    public ControlVerdict? At(DateTimeOffset time) => Verdicts.LastOrDefault(v => v.At <= time);

    /// <summary>The last time that a bad check throws doubt on, even where a good one ended it; null where every check was good or not judged.</summary>
    public DoubtedTime? Doubt
    {
        get
        {
            var bad = Verdicts.Count - 1;
            while (bad >= 0 && Verdicts[bad] is not { IsJudged: true, IsGood: false }) bad--;
            return bad < 0 ? null : new(Verdicts.Take(bad).LastOrDefault(v => v.IsGood)?.At, Verdicts.Skip(bad).FirstOrDefault(v => v.IsGood)?.At);
        }
    }
}

/// <summary>What was measured in it may be wrong: from the last good check before a bad one to the first good one after it.</summary>
/// <param name="Since">Null where no check before was good.</param>
/// <param name="Until">Null where none after it was good yet.</param>
public sealed record DoubtedTime(DateTimeOffset? Since, DateTimeOffset? Until);

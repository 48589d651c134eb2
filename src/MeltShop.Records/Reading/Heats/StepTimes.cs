using MeltShop.Records.Heats;

namespace MeltShop.Records.Reading.Heats;

/// <summary>When a heat came into a state.</summary>
public sealed record StepTime(HeatState State, DateTimeOffset At);

/// <summary>How long a heat was in each of its states.</summary>
public static class StepTimes
{
    /// <summary>
    /// Minutes by state, those of the last one until now. A state that was gone through twice has the sum; one that was not gone through, and
    /// one whose times are put right so that it would have ended before it began, has none. What has ended takes no time.
    /// </summary>
    /// <param name="startedAt">When the heat began, as it stands now.</param>
    /// <param name="steps">The states in force, in any order.</param>
    /// <param name="now">Until when the last one counts.</param>
    public static IReadOnlyDictionary<HeatState, double> Minutes(DateTimeOffset startedAt, IEnumerable<StepTime> steps, DateTimeOffset now)
    {
        var times = steps.Where(step => step.State != HeatState.Charging || step.At > startedAt).OrderBy(step => step.At).ThenBy(step => step.State)
            .Prepend(new(HeatState.Charging, startedAt)).ToList();
        return times.Zip(times.Skip(1).Select(step => step.At).Append(now), (step, end) => (step.State, Length: end - step.At))
            .Where(one => one.State is HeatState.Charging or HeatState.Bath or HeatState.Tapping)
            .GroupBy(one => one.State).Where(state => state.All(one => one.Length >= TimeSpan.Zero))
            .ToDictionary(state => state.Key, state => state.Sum(one => one.Length.TotalMinutes));
    }
}

using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Operations.Ladles;

/// <summary>
/// The minutes at which pouring from a ladle must stop, the same for the clocks on the pages and for the operation that holds a mould.
/// Each limit counts on its own: magnesium from the end of the reaction, inoculation from its own last addition, temperature from
/// the last reading.
/// </summary>
public static class PouringLimits
{
    /// <summary>All that hold for a ladle, the first to be reached first; empty before the tap.</summary>
    public static IReadOnlyList<PouringLimit> Of(LadleTimes times)
    {
        ArgumentNullException.ThrowIfNull(times);
        if (times.TappedAt is not { } tappedAt) return [];
        IEnumerable<PouringLimit?> limits = [Magnesium(times), Inoculation(times, tappedAt), Temperature(times), House(times, tappedAt)];
        return [.. limits.OfType<PouringLimit>().OrderBy(l => l.StopAt)];
    }

    /// <summary>The one that was reached before an instant; null where pouring was still allowed then.</summary>
    public static PouringLimit? ReachedBefore(LadleTimes times, DateTimeOffset at) => Of(times).FirstOrDefault(l => l.StopAt < at);

    private static PouringLimit? Magnesium(LadleTimes times)
    {
        if (!times.HasMagnesium || times.MgPercent is null || times.MgFrom is not { } from) return null;
        DateTimeOffset? earliest = times.MgLeastPercent is null ? null : from.AddMinutes(times.LeastMinutesToFloor ?? 0);
        return new(PouringLimitKind.Magnesium, from, from.AddMinutes(times.MinutesToFloor ?? 0), earliest, times.ReactionEndedAt is null && times.MgChangedAt is null);
    }

    private static PouringLimit? Inoculation(LadleTimes times, DateTimeOffset tappedAt)
    {
        if (times.InoculationMinutes is not { } minutes) return null;
        var from = times.InoculatedAt ?? tappedAt;
        return new(PouringLimitKind.Inoculation, from, from.AddMinutes(minutes), null, times.InoculatedAt is null);
    }

    private static PouringLimit? Temperature(LadleTimes times)
    {
        if (times is not { TemperatureC: { } now, TemperatureAt: { } at, LeastPouringC: { } least, HeatLossKPerMinute: > 0 and var loss }) return null;
        return new(PouringLimitKind.Temperature, at, at.AddMinutes(Math.Max(0, now - least) / loss), null, !times.IsTemperatureMeasured);
    }

    private static PouringLimit? House(LadleTimes times, DateTimeOffset tappedAt)
    {
        if (times.HouseMinutes is not { } minutes) return null;
        var from = times.ReactionEndedAt ?? times.TapStartedAt ?? tappedAt;
        return new(PouringLimitKind.HouseRule, from, from.AddMinutes(minutes), null, times.HasMagnesium && times.ReactionEndedAt is null);
    }
}

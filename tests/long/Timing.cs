using System.Diagnostics;

namespace MeltShop.Long;

/// <summary>Times of many rounds, milliseconds.</summary>
internal sealed record Timing(double Median, double P95, double Longest)
{
    /// <summary>Two things in turns, so that what disturbs one disturbs the other.</summary>
    public static (Timing Floor, Timing Mine) OfBoth(int rounds, Action floor, Action mine)
    {
        var (floors, mines) = (new double[rounds], new double[rounds]);
        for (var i = -rounds / 10; i < rounds; i++)
        {
            var (one, other) = (Time(floor), Time(mine));
            if (i >= 0) (floors[i], mines[i]) = (one, other);
        }

        return (Of(floors), Of(mines));
    }

    public static Timing Of(double[] times)
    {
        Array.Sort(times);
        return new(times[times.Length / 2], times[times.Length * 95 / 100], times[^1]);
    }

    public static double Time(Action action)
    {
        var started = Stopwatch.GetTimestamp();
        action();
        return Stopwatch.GetElapsedTime(started).TotalMilliseconds;
    }

    public override string ToString() => $"median {Median:F3} ms, p95 {P95:F3} ms";
}

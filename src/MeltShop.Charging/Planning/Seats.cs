namespace MeltShop.Charging.Planning;

/// <summary>
/// How many questions are solved at once; more would only make all of them late. Machines may take all but one of each kind, so that a person at a page never
/// waits behind them.
/// </summary>
public static class Seats
{
    /// <summary>Of questions that are done within milliseconds: one for each core, and one that is kept free.</summary>
    public static int Plain { get; } = Math.Max(2, Environment.ProcessorCount) + 1;

    /// <summary>Of questions with whole pieces, which may take their whole time: one less than the cores, and two at least, or a page would wait behind a machine.</summary>
    public static int Pieces { get; } = Math.Max(2, Environment.ProcessorCount - 1);
}

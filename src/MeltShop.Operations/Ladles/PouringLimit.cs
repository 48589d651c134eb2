using MeltShop.Records.Ladles;

namespace MeltShop.Operations.Ladles;

/// <summary>A minute at which pouring from a ladle must stop.</summary>
/// <param name="From">From when it counts.</param>
/// <param name="StopAt">When it is reached, by the line.</param>
/// <param name="EarliestStopAt">When it may be reached already, by the band; null where no band is known.</param>
/// <param name="IsAssumed">It does not count from what was seen: nobody pressed, or nothing was measured.</param>
public sealed record PouringLimit(
    PouringLimitKind Kind, DateTimeOffset From, DateTimeOffset StopAt, DateTimeOffset? EarliestStopAt, bool IsAssumed);

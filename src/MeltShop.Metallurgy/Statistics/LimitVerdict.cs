namespace MeltShop.Metallurgy.Statistics;

/// <summary>Where a measured value stands against its limits.</summary>
public enum LimitVerdict
{
    /// <summary>Inside, by more than the guard band.</summary>
    In,

    /// <summary>Outside, by more than the guard band.</summary>
    Out,

    /// <summary>So near a limit that the measurement cannot tell.</summary>
    TooClose,
}

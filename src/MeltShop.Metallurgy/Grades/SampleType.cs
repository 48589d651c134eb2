namespace MeltShop.Metallurgy.Grades;

/// <summary>Where the test piece of a minimum comes from.</summary>
public enum SampleType
{
    /// <summary>A separately cast bar or block.</summary>
    SeparatelyCast,

    /// <summary>A sample cast with the casting: cast on, side by side, or separately cast of the same wall.</summary>
    CastSample,

    /// <summary>Cut from the casting; in EN 1561 an expected value, not a minimum.</summary>
    ExpectedInCasting,
}

namespace MeltShop.Web.Demo;

/// <summary>How the magnesium alloy meets the iron.</summary>
public enum DemoTreatmentProcess
{
    /// <summary>Alloy in the pocket under cover steel, ladle open.</summary>
    Sandwich,

    /// <summary>The same under a lid that holds the iron back and lets it in through a hole.</summary>
    TundishCover,
}

/// <summary>A treatment ladle.</summary>
public sealed record DemoLadle
{
    /// <summary>Unique.</summary>
    public required string Code { get; init; }

    /// <summary>Name shown.</summary>
    public required string Name { get; init; }

    /// <summary>Treatment process.</summary>
    public required DemoTreatmentProcess Process { get; init; }

    /// <summary>Iron when full to the brim, kg.</summary>
    public required double CapacityKg { get; init; }

    /// <summary>Largest mass that still leaves the freeboard that the reaction needs, kg.</summary>
    public required double LargestTreatedKg { get; init; }

    /// <summary>Alloy and cover that the pocket holds, kg.</summary>
    public required double PocketKg { get; init; }

    /// <summary>Magnesium recovery with the sulphur credit, % of the magnesium in the alloy.</summary>
    public required double MagnesiumRecoveryPercent { get; init; }

    /// <summary>Linear fade, mass percent of magnesium per minute.</summary>
    public required double FadePercentPerMinute { get; init; }

    /// <summary>Loss of temperature while it stands, K per minute.</summary>
    public required double HeatLossKelvinPerMinute { get; init; }

    /// <summary>Loss of temperature by the treatment, K.</summary>
    public required double TreatmentLossKelvin { get; init; }

    /// <summary>Source of each group of figures.</summary>
    public required DemoLadleSources Sources { get; init; }
}

/// <summary>Where a ladle's figures come from.</summary>
/// <param name="Freeboard">Of the largest treated mass.</param>
/// <param name="Pocket">Of the pocket.</param>
/// <param name="Recovery">Of the magnesium recovery.</param>
/// <param name="Fade">Of the fade.</param>
/// <param name="HeatLoss">Of both losses of temperature.</param>
public sealed record DemoLadleSources(DemoSource Freeboard, DemoSource Pocket, DemoSource Recovery, DemoSource Fade, DemoSource HeatLoss);

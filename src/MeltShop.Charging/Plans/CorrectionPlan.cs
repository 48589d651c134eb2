namespace MeltShop.Charging.Plans;

/// <summary>The answer to a <see cref="Problems.CorrectionProblem"/>.</summary>
public sealed record CorrectionPlan
{
    /// <summary>The additions as a plan: lines, limits, conflicts; its cost includes the tapping off, its liquid mass is the bath afterwards.</summary>
    public required ChargePlan Plan { get; init; }

    /// <summary>Mass to tap off first, kg.</summary>
    public double TapOffKg { get; init; }

    /// <summary>Fall of temperature by the additions with the power off, K (positive = cooler); null where it cannot be said.</summary>
    public double? TemperatureDropC { get; init; }

    /// <summary>Where the temperature cannot be said: the additions whose heat is not known.</summary>
    public IReadOnlyList<string> HeatUnknown { get; init; } = [];
}

using MeltShop.Metallurgy.Elements;

namespace MeltShop.Records.Yard;

/// <summary>One element of a material's analysis.</summary>
public sealed class MaterialPercent
{
    public long Id { get; init; }
    public long AnalysisId { get; init; }
    public required Element Element { get; init; }
    public required double Percent { get; init; }

    /// <summary>Standard deviation, percentage points; null where it is not known.</summary>
    public double? Spread { get; init; }

    /// <summary>Share that arrives in the melt with the charge, %; null where all of it does.</summary>
    public double? RecoveryPercent { get; init; }

    /// <summary>Share that arrives when it goes into liquid iron, %; null where nobody said: then that of the charge counts.</summary>
    public double? BathRecoveryPercent { get; init; }
}

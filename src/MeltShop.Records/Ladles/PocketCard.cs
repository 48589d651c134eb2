using MeltShop.Records.Keeping;

namespace MeltShop.Records.Ladles;

/// <summary>
/// What goes into the ladle before the tap, with all that the calculation used. Grey iron has no magnesium: its card holds the
/// inoculant and the fill limit, and the treatment figures are null.
/// </summary>
public sealed class PocketCard : Fact
{
    public required long TreatedLadleId { get; init; }
    public required double PlannedKg { get; init; }
    public required double TemperatureC { get; init; }
    public double? BaseSulphurPercent { get; init; }
    public double? TargetMgPercent { get; init; }
    public double? MgFloorPercent { get; init; }
    public double? MinutesToLastMould { get; init; }
    public long? AlloyMaterialId { get; init; }
    public double? AlloyKg { get; init; }
    public required long InoculantMaterialId { get; init; }
    public required double InoculantKg { get; init; }

    /// <summary>Greatest tapped mass at which this pocket still keeps the magnesium floor at the last mould, and not over the fill limit, kg.</summary>
    public required double StopWeightKg { get; init; }

    /// <summary>The treatment problem as JSON.</summary>
    public string? Problem { get; init; }

    /// <summary>Its answer as JSON.</summary>
    public string? Answer { get; init; }

    public required string Versions { get; init; }

    /// <summary>Treatment process of the ladle; null on cards of before it was kept, and for grey iron.</summary>
    public string? Process { get; init; }

    /// <summary>What the calculation asked for where the scale or whole bags gave another <see cref="AlloyKg"/>, kg.</summary>
    public double? NeededAlloyKg { get; init; }

    /// <summary>Greatest mass with which the magnesium floor still holds at the last mould, kg; the fill limit is not in it.</summary>
    public double? LargestIronKg { get; init; }

    public long? CoverMaterialId { get; init; }
    public double? CoverKg { get; init; }

    /// <summary>Inoculant for the stream and the moulds, kg; beside that of the ladle.</summary>
    public double? StreamInoculantKg { get; init; }

    public double? MouldInoculantKg { get; init; }

    /// <summary>Copper or tin to bring the iron to its grade.</summary>
    public long? PearliteMaterialId { get; init; }

    public double? PearliteKg { get; init; }

    /// <summary>Least and most of the band that the card reckoned with: recovery in %, fade in percentage points a minute.</summary>
    public double? MgRecoveryLeastPercent { get; init; }

    public double? MgRecoveryMostPercent { get; init; }
    public double? MgFadeMostPercentPerMinute { get; init; }
    public double? MgFadeLeastPercentPerMinute { get; init; }

    /// <summary>Lots as they stand on the bags; null where nobody said.</summary>
    public string? AlloyLot { get; init; }

    public string? CoverLot { get; init; }
    public string? InoculantLot { get; init; }
    public string? PearliteLot { get; init; }

    public double? HeatLossKPerMinute { get; init; }
    public double? TreatmentLossK { get; init; }
    public double? LeastPouringC { get; init; }
    public double? InoculationMinutes { get; init; }
    public double? HouseMinutes { get; init; }

    /// <summary>What was looked at before the pocket was loaded, separated by blanks; null on cards of before it was kept.</summary>
    public string? Checks { get; init; }
}

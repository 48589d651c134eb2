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
}

using MeltShop.Records.Keeping;

namespace MeltShop.Records.Sites;

/// <summary>A treatment ladle with the figures that its pocket card needs, and where they come from.</summary>
public sealed class Ladle : IVersioned
{
    public long Id { get; init; }
    public required string Code { get; init; }
    public required string Name { get; set; }

    /// <summary>Treatment process: <c>sandwich</c>, <c>tundishCover</c>, …</summary>
    public required string Process { get; set; }

    /// <summary>Greatest mass that leaves the freeboard which the reaction needs, kg.</summary>
    public required double FillLimitKg { get; set; }

    /// <summary>What the pocket holds, kg of treatment alloy and cover.</summary>
    public required double PocketKg { get; set; }

    /// <summary>Magnesium recovery with the sulphur credited, %.</summary>
    public required double MgRecoveryPercent { get; set; }

    /// <summary>Temperature at which the recovery was found, °C; null where it is taken as it is.</summary>
    public double? RecoveryTemperatureC { get; set; }

    /// <summary>Loss of residual magnesium, percentage points a minute.</summary>
    public required double MgFadePercentPerMinute { get; set; }

    public required double HeatLossKPerMinute { get; set; }

    /// <summary>Where the figures come from: a published range, the shop's entry, learnt.</summary>
    public required string FiguresSource { get; set; }

    /// <summary>Iron to the brim, kg.</summary>
    public double? CapacityKg { get; set; }

    public double? HeightToDiameter { get; set; }

    /// <summary>Null where nobody said.</summary>
    public bool? HasLid { get; set; }

    /// <summary>Loss of temperature by tap and treatment, K.</summary>
    public double? TreatmentLossK { get; set; }

    /// <summary>Least pouring temperature, °C; null where the house sets none.</summary>
    public double? LeastPouringC { get; set; }

    /// <summary>Most treatment temperature, °C; null where the house sets none.</summary>
    public double? MostTreatmentC { get; set; }

    /// <summary>Minutes that an inoculation may be old; null where the house sets no limit.</summary>
    public double? InoculationMinutes { get; set; }

    /// <summary>Minutes from the end of the reaction that the house allows; null where it sets no limit.</summary>
    public double? HouseMinutes { get; set; }

    /// <summary>Magnesium of the wire, g a metre; null for a ladle without a wire feeder.</summary>
    public double? WireMgGramsPerMetre { get; set; }

    public double? WireMetresPerMinute { get; set; }

    /// <summary>How warm it was when somebody looked; null where nobody did.</summary>
    public LadlePreheat? Preheat { get; set; }

    public DateTimeOffset? PreheatSeenAt { get; set; }

    public bool IsActive { get; set; } = true;
    public Guid Version { get; set; }
}

/// <summary>How warm a ladle is.</summary>
public enum LadlePreheat
{
    Cold,
    Warm,

    /// <summary>Red inside.</summary>
    Hot,
}

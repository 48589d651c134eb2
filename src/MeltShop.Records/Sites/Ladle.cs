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

    public bool IsActive { get; set; } = true;
    public Guid Version { get; set; }
}

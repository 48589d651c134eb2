using MeltShop.Records.Keeping;
using MeltShop.Records.Yard;

namespace MeltShop.Records.Heats;

/// <summary>A mass of a material that went into the furnace.</summary>
public sealed class Weighing : Fact
{
    public required long HeatId { get; init; }
    public required long MaterialId { get; init; }
    public required double Kg { get; init; }

    /// <summary>True where it went into the molten bath as a correction, false with the charge.</summary>
    public bool IntoBath { get; init; }

    public RecoveryStage Stage => IntoBath ? RecoveryStage.Bath : RecoveryStage.Charge;

    /// <summary>The lot as it stands on the bag or the pile; null where nobody said.</summary>
    public string? Lot { get; init; }
}

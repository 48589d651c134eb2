using MeltShop.Records.Keeping;

namespace MeltShop.Records.Sites;

public sealed class Furnace : IVersioned
{
    public long Id { get; init; }
    public required string Code { get; init; }
    public required string Name { get; set; }
    public required double CapacityKg { get; set; }
    public required double PowerKw { get; set; }

    /// <summary>The highest bath temperature that the lining and its maker allow, °C; null: nobody has entered one.</summary>
    public double? HighestC { get; set; }

    /// <summary>Room for the cold charge, m³; null: nobody has entered one, and no plan is held to it.</summary>
    public double? ColdChargeM3 { get; set; }

    /// <summary>
    /// Liquid in it, kg: the sum of its ledger's lines that no later one corrects. Kept beside them by the database, because a furnace has lines for as long as there are heats.
    /// </summary>
    public double LiquidKg { get; init; }

    public bool IsActive { get; set; } = true;
    public Guid Version { get; set; }
}

using MeltShop.Records.Keeping;

namespace MeltShop.Records.Yard;

/// <summary>Something that lies in the yard. Its analysis, price and stock are facts beside it; this row is their current state.</summary>
public sealed class Material : IVersioned
{
    public long Id { get; init; }
    public required string Code { get; init; }
    public required string Name { get; set; }
    public required MaterialKind Kind { get; set; }
    public required MaterialUses Uses { get; set; }

    /// <summary>Current price per 1000 kg weighed, in the site's currency; zero or below is allowed.</summary>
    public required decimal PricePerTonne { get; set; }

    /// <summary>Current stock, kg: the sum of its ledger; null where it was never counted.</summary>
    public double? StockKg { get; set; }

    /// <summary>The analysis in force.</summary>
    public long? AnalysisId { get; set; }

    /// <summary>What of it becomes metal, %; null where nobody knows: then it is not planned from and not weighed in.</summary>
    public required double? MetallicYieldPercent { get; set; }

    /// <summary>Whole pieces of this mass only, kg; null where it can be weighed to any mass.</summary>
    public double? PieceKg { get; set; }

    public double? BulkDensityTonnesPerM3 { get; set; }

    /// <summary>Greatest share of a charge that the shop allows, %; null where it sets none.</summary>
    public double? MaxSharePercent { get; set; }

    /// <summary>Caution codes, separated by blanks: <c>galvanised oily</c>.</summary>
    public string Cautions { get; set; } = "";

    /// <summary>Price, stock and piece mass are invented for the demo.</summary>
    public bool IsDemo { get; init; }

    public bool IsActive { get; set; } = true;
    public Guid Version { get; set; }
}

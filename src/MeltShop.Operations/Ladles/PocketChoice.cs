namespace MeltShop.Operations.Ladles;

/// <summary>What a person chooses for a ladle before the tap; what they leave open comes from the grade's recipe and the bath.</summary>
/// <param name="PlannedKg">Iron to be tapped, kg.</param>
/// <param name="TemperatureC">Treatment temperature, °C.</param>
/// <param name="BaseSulphurPercent">Base sulphur, %; null for what the bath sample says.</param>
/// <param name="TargetMgPercent">Residual magnesium wanted at the last mould, %; null for the recipe's.</param>
/// <param name="MgFloorPercent">Least residual magnesium at the last mould, %; null for the recipe's.</param>
/// <param name="MinutesToLastMould">End of the reaction to the end of the pour of the last mould; null for the recipe's.</param>
/// <param name="InoculantRatePercent">Inoculant for the ladle, % of the tapped mass.</param>
public sealed record PocketChoice(
    double PlannedKg,
    double TemperatureC,
    double? BaseSulphurPercent,
    double? TargetMgPercent,
    double? MgFloorPercent,
    double? MinutesToLastMould,
    double InoculantRatePercent)
{
    public PocketExtras Extras { get; init; } = new();
}

/// <summary>What a pocket card may hold besides.</summary>
public sealed record PocketExtras
{
    /// <summary>Alloy that the scale or whole bags gave, kg; null for what the calculation asks for.</summary>
    public double? AlloyKg { get; init; }

    /// <summary>Cover steel; null for none.</summary>
    public long? CoverMaterialId { get; init; }

    /// <summary>Cover, % of the planned mass.</summary>
    public double? CoverRatePercent { get; init; }

    /// <summary>Inoculant for the stream and for the moulds, % of the tapped mass.</summary>
    public double? StreamRatePercent { get; init; }

    public double? MouldRatePercent { get; init; }

    /// <summary>Copper or tin to bring the iron to its grade; null for none.</summary>
    public long? PearliteMaterialId { get; init; }

    /// <summary>Lots as they stand on the bags.</summary>
    public PocketLots Lots { get; init; } = new();

    /// <summary>What was looked at before the pocket was loaded: <see cref="PocketChecks"/>.</summary>
    public IReadOnlyList<string> Checks { get; init; } = [];
}

/// <summary>The lots that a pocket card was loaded from, as they stand on the bags; null where nobody said.</summary>
public sealed record PocketLots(string? Alloy = null, string? Cover = null, string? Inoculant = null, string? Pearlite = null);

namespace MeltShop.Charging.Plans;

/// <summary>What a charge may miss.</summary>
public enum MissKind
{
    /// <summary>A limit on a quantity of the melt, its margins included.</summary>
    Quantity,

    /// <summary>The liquid mass, kg.</summary>
    LiquidKg,

    /// <summary>The mass of all that is weighed, kg.</summary>
    WeighedKg,

    /// <summary>A least or greatest mass of a material, kg.</summary>
    MaterialKg,

    /// <summary>The stock of a material, kg.</summary>
    Stock,

    /// <summary>A share of a material, %.</summary>
    MaterialPercent,

    /// <summary>Whole pieces: what is asked is the nearest whole multiple, kg.</summary>
    Pieces,

    /// <summary>A mass of a group, kg.</summary>
    GroupKg,

    /// <summary>A share of a group, %.</summary>
    GroupPercent,

    /// <summary>The room for the cold charge, m³.</summary>
    Volume,

    /// <summary>What is weighed in already cannot be taken out, kg.</summary>
    AlreadyIn,
}

/// <summary>Something that a charge misses.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">The quantity, the code, the group, the room; empty for the masses of the whole.</param>
/// <param name="IsMax">Whether it is too much; false where it is too little.</param>
/// <param name="Asked">The bound that had to be kept, margins included.</param>
/// <param name="Value">The value that it has.</param>
public sealed record Miss(MissKind Kind, string Name, bool IsMax, double Asked, double Value)
{
    /// <summary>How far inside of its limit the bound lies by margin and scatter; 0 for all but quantities.</summary>
    public double Inward { get; init; }

    /// <inheritdoc cref="Problems.QuantityLimit.HeldMargin"/>
    public double HeldMargin { get; init; }

    /// <summary>By how much it is missed, above 0.</summary>
    public double By => IsMax ? Value - Asked : Asked - Value;
}

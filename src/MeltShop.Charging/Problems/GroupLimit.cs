namespace MeltShop.Charging.Problems;

/// <summary>Bounds on several materials together, such as all returns or all galvanised scrap. Masses are weighed kilograms.</summary>
public sealed record GroupLimit
{
    /// <summary>What people call the group; unique in the problem.</summary>
    public required string Name { get; init; }

    /// <summary>Codes of its materials, all of which the problem names.</summary>
    public required IReadOnlyList<string> Codes { get; init; }

    /// <summary>Least mass of them together, kg: compulsory.</summary>
    public double MinKg { get; init; }

    /// <summary>Greatest mass of them together, kg; null where unlimited.</summary>
    public double? MaxKg { get; init; }

    /// <summary>Least share of the total weighed mass, 0 to 100 %.</summary>
    public double MinPercent { get; init; }

    /// <summary>Greatest share of the total weighed mass, 0 to 100 %.</summary>
    public double MaxPercent { get; init; } = 100;
}

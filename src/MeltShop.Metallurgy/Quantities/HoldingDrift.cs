namespace MeltShop.Metallurgy.Quantities;

/// <summary>Which way a held bath drifts by the crucible reaction.</summary>
public enum HoldingDrift
{
    /// <summary>Between equilibrium and boiling: little happens.</summary>
    Still,

    /// <summary>Below equilibrium: silicon burns off, silica dross forms.</summary>
    SiliconBurns,

    /// <summary>Above boiling: carbon falls, silicon rises, the lining wears.</summary>
    CarbonBoils,
}

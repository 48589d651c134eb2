namespace MeltShop.Records.Ladles;

/// <summary>Why pouring from a ladle must stop at a minute.</summary>
public enum PouringLimitKind
{
    /// <summary>Residual magnesium reaches its floor.</summary>
    Magnesium,

    /// <summary>The inoculation is older than the house allows.</summary>
    Inoculation,

    /// <summary>The iron reaches the least pouring temperature.</summary>
    Temperature,

    /// <summary>The house allows so many minutes, whatever the iron is like.</summary>
    HouseRule,
}

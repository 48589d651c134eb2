namespace MeltShop.Metallurgy.Statistics;

/// <summary>By which test a burn became suspect.</summary>
public enum BurnTest
{
    /// <summary>Range against known repeatability.</summary>
    Range,

    /// <summary>Grubbs' test, two-sided.</summary>
    Grubbs,
}

namespace MeltShop.Metallurgy.Formulas;

/// <summary>How a figure came into this room.</summary>
public enum Standing
{
    /// <summary>Read in the source itself or in a published extract of it.</summary>
    Read,

    /// <summary>Known from memory; nobody has held the source against it.</summary>
    Remembered,

    /// <summary>A fact of the trade without a source.</summary>
    Practice,

    /// <summary>Worked out from other figures by arithmetic.</summary>
    Derived,
}

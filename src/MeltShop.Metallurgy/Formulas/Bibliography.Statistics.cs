namespace MeltShop.Metallurgy.Formulas;

public static partial class Bibliography
{
    /// <summary>Control charts.</summary>
    public static Source Iso7870 { get; } = new("iso-7870-2", "ISO 7870-2, Control charts, part 2: Shewhart control charts, 2023", Standing.Remembered);

    /// <summary>Decision rules.</summary>
    public static Source Iso17025 { get; } = new("iso-17025",
        "ISO/IEC 17025, General requirements for the competence of testing and calibration laboratories, 2017, 7.8.6 (idea)", Standing.Remembered);

    /// <summary>Capability.</summary>
    public static Source Nist { get; } = new("nist", "NIST/SEMATECH, e-Handbook of Statistical Methods, 2012, 6.1.6", Standing.Remembered);

    /// <summary>Interval of capability.</summary>
    public static Source Bissell { get; } = new("bissell",
        "A. F. Bissell, How reliable is your capability index?, Applied Statistics 39, 1990", Standing.Remembered);
}

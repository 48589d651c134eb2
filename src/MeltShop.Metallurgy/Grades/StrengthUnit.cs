namespace MeltShop.Metallurgy.Grades;

/// <summary>Unit in which a standard states strength. Grades of its two sides are not each other's conversions.</summary>
public enum StrengthUnit
{
    /// <summary>Newton per square millimetre.</summary>
    MPa,

    /// <summary>A thousand pounds per square inch, 6.894757 MPa.</summary>
    Ksi,
}

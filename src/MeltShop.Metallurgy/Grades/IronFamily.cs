namespace MeltShop.Metallurgy.Grades;

/// <summary>Kind of cast iron.</summary>
public enum IronFamily
{
    /// <summary>Flake graphite.</summary>
    Grey,

    /// <summary>Spheroidal graphite.</summary>
    Ductile,

    /// <summary>Spheroidal graphite, austempered.</summary>
    AustemperedDuctile,
}

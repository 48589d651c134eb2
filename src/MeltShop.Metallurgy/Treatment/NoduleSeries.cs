using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Nodule counts of published series of Y-blocks, 0.5 % Si of post-inoculation: data to compare with, no law.</summary>
/// <param name="Magnesium">Magnesium carrier.</param>
/// <param name="Inoculant">Post-inoculant.</param>
/// <param name="Thin">Count in the block of 6.35 mm, per mm²; the print gives ranges, whose first number is taken for the thin block.</param>
/// <param name="Thick">Count in the block of 76 mm, per mm².</param>
public sealed record NoduleSeries(string Magnesium, string Inoculant, double Thin, double Thick)
{
    /// <summary>Where the series come from.</summary>
    public static Source Source => Bibliography.Michigan;

    /// <summary>The series.</summary>
    public static IReadOnlyList<NoduleSeries> All { get; } =
    [
        new("MgFeSi", "FeSi75", 327, 76), new("CeMgFeSi", "FeSi75", 428, 56), new("NiMg", "FeSi75", 212, 54),
        new("MgFeSi", "SrFeSi", 102, 6), new("CeMgFeSi", "SrFeSi", 233, 48), new("NiMg", "SrFeSi", 217, 81),
    ];

    /// <summary>How steeply the count falls with section in this series: n of N ~ t⁻ⁿ between the two blocks.</summary>
    public double Exponent => Math.Log(Thin / Thick) / Math.Log(76.2 / 6.35);

    /// <summary>Counts printed in thousands per square inch, per mm².</summary>
    /// <param name="thousands">Thousands per square inch.</param>
    public static double FromThousandsPerSquareInch(double thousands) => thousands * 1000 / 645.16;
}

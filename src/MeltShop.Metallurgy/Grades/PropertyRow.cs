using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Grades;

/// <summary>Tensile minima of a grade for one wall class. All values null: to be agreed between maker and buyer.</summary>
/// <param name="Sample">Where the test piece comes from.</param>
/// <param name="OverMm">Wall over this, mm; null where there is no lower bound.</param>
/// <param name="UpToMm">Wall up to this, mm; null where there is no upper bound.</param>
/// <param name="Tensile">Least tensile strength, in <paramref name="Unit"/>.</param>
/// <param name="TensileMost">Most tensile strength where the standard has one.</param>
/// <param name="Proof">Least 0.2 % proof strength.</param>
/// <param name="ElongationPercent">Least elongation after fracture, %.</param>
/// <param name="Standing">Whether the row was read or is remembered.</param>
/// <param name="Unit">Unit of the strengths.</param>
public sealed record PropertyRow(
    SampleType Sample, double? OverMm, double? UpToMm, double? Tensile, double? TensileMost, double? Proof, double? ElongationPercent,
    Standing Standing, StrengthUnit Unit = StrengthUnit.MPa)
{
    private const double MPaPerKsi = 6.894757;

    /// <summary>True where the standard leaves the values to an agreement.</summary>
    public bool ByAgreement => Tensile is null && Proof is null && ElongationPercent is null;

    /// <summary>Least tensile strength, MPa.</summary>
    public double? TensileMPa => InMPa(Tensile);

    /// <summary>Least proof strength, MPa.</summary>
    public double? ProofMPa => InMPa(Proof);

    /// <summary>True where a wall falls into this class.</summary>
    /// <param name="wallMm">Relevant wall, mm.</param>
    public bool Covers(double wallMm) => (OverMm is not { } over || wallMm > over) && (UpToMm is not { } upTo || wallMm <= upTo);

    private double? InMPa(double? strength) => Unit == StrengthUnit.Ksi ? strength * MPaPerKsi : strength;
}

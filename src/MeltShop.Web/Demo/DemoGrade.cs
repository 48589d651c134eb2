using MeltShop.Records.Grades;

namespace MeltShop.Web.Demo;

/// <summary>A grade of cast iron with the foundry's own windows for one range of sections.</summary>
public sealed record DemoGrade
{
    /// <summary>Designation of the standard.</summary>
    public required string Code { get; init; }

    /// <summary>Ductile or grey.</summary>
    public required IronFamily Family { get; init; }

    /// <summary>Sections that the windows are meant for.</summary>
    public required string Section { get; init; }

    /// <summary>Window of the poured iron, after treatment and inoculation.</summary>
    public required IReadOnlyList<DemoWindowRow> Poured { get; init; }

    /// <summary>Window of the furnace iron, before treatment: the poured window worked back through <see cref="Recipe"/>.</summary>
    public required IReadOnlyList<DemoWindowRow> Furnace { get; init; }

    /// <summary>Where the windows come from.</summary>
    public required string Source { get; init; }

    /// <summary>Default ladle recipe.</summary>
    public required DemoRecipe Recipe { get; init; }

    /// <summary>What the standard asks of the castings.</summary>
    public required DemoMechanical Mechanical { get; init; }
}

/// <summary>Least, aim and most of a quantity; each may be open.</summary>
/// <param name="Quantity">Element symbol, or CE = C + (Si + P)/3.</param>
/// <param name="Least">Least, % (CE: dimensionless).</param>
/// <param name="Aim">Where plans should end if it is cheap.</param>
/// <param name="Most">Most.</param>
/// <param name="Margin">How far inside its bounds a plan has to end, 0 or more.</param>
public sealed record DemoWindowRow(string Quantity, double? Least, double? Aim, double? Most, double Margin);

/// <summary>Default ladle recipe of a grade.</summary>
/// <param name="Treatment">Magnesium treatment; null for grey iron.</param>
/// <param name="Inoculation">Inoculation.</param>
/// <param name="Source">Where its figures come from.</param>
public sealed record DemoRecipe(DemoTreatment? Treatment, DemoInoculation Inoculation, string Source);

/// <summary>Default magnesium treatment.</summary>
/// <param name="AlloyCode">Treatment alloy.</param>
/// <param name="TargetMagnesiumPercent">Residual magnesium wanted at <paramref name="AtMinutes"/>, %.</param>
/// <param name="AtMinutes">End of the pour of the last mould, minutes after the end of the reaction.</param>
/// <param name="FadePercentPerMinute">Linear fade, % per minute.</param>
/// <param name="MagnesiumRecoveryPercent">Recovery with the sulphur credit, %.</param>
/// <param name="SulphurLeftPercent">Sulphur after the treatment, %.</param>
/// <param name="CoverCode">Cover steel.</param>
/// <param name="CoverPercent">Cover steel, % of the iron.</param>
public sealed record DemoTreatment(
    string AlloyCode, double TargetMagnesiumPercent, double AtMinutes, double FadePercentPerMinute,
    double MagnesiumRecoveryPercent, double SulphurLeftPercent, string CoverCode, double CoverPercent);

/// <summary>Default inoculation.</summary>
/// <param name="InoculantCode">Inoculant.</param>
/// <param name="RatePercent">Mass, % of the iron.</param>
public sealed record DemoInoculation(string InoculantCode, double RatePercent);

/// <summary>What the standard asks of test pieces.</summary>
/// <param name="HardnessBrinellGuide">Usual Brinell hardness, for information.</param>
/// <param name="Source">Standard and edition.</param>
/// <param name="Minima">Minima by sample.</param>
public sealed record DemoMechanical(string HardnessBrinellGuide, string Source, IReadOnlyList<DemoMinimum> Minima);

/// <summary>Minima of one kind of sample.</summary>
/// <param name="Sample">Which sample and wall.</param>
/// <param name="TensileStrengthMpa">Rm, MPa.</param>
/// <param name="ProofStrengthMpa">Rp0.2, MPa; null where the standard gives none.</param>
/// <param name="ElongationPercent">A, %; null where the standard gives none.</param>
/// <param name="SourceKind">Read in a copy of the standard, or from memory.</param>
public sealed record DemoMinimum(string Sample, double TensileStrengthMpa, double? ProofStrengthMpa, double? ElongationPercent, DemoSourceKind SourceKind);

namespace MeltShop.Metallurgy.Grades;

/// <summary>What a test piece is tested for; the unit stands in the name.</summary>
public enum CastProperty
{
    /// <summary>Tensile strength Rm, MPa.</summary>
    TensileMPa,

    /// <summary>0.2 % proof strength Rp0.2, MPa.</summary>
    ProofMPa,

    /// <summary>Elongation after fracture A, %.</summary>
    ElongationPercent,

    /// <summary>Brinell hardness, HBW.</summary>
    HardnessHbw,

    /// <summary>Mean impact energy of three notched bars, J.</summary>
    ImpactMeanJ,

    /// <summary>Least single impact energy of the three, J.</summary>
    ImpactSingleJ,

    /// <summary>Nodularity, % of the graphite of forms V and VI.</summary>
    NodularityPercent,

    /// <summary>Nodule count, 1/mm².</summary>
    NodulesPerMm2,

    /// <summary>Predominant graphite form of ISO 945-1, I to VI as 1 to 6.</summary>
    GraphiteForm,

    /// <summary>Graphite size class of ISO 945-1, 1 to 8.</summary>
    GraphiteSize,

    /// <summary>Ferrite, % of the matrix.</summary>
    FerritePercent,

    /// <summary>Pearlite, % of the matrix.</summary>
    PearlitePercent,

    /// <summary>Carbides, % of the area.</summary>
    CarbidePercent,
}

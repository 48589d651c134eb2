using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Operations.Ladles;

/// <summary>What goes into a ladle before the tap.</summary>
/// <param name="Problem">The treatment as it was worked out; null for grey iron.</param>
/// <param name="Treatment">Its answer; null for grey iron.</param>
/// <param name="InoculantKg">Inoculant for the planned mass, kg.</param>
/// <param name="StopWeightKg">Greatest mass to tap, kg: the magnesium floor at the last mould and the fill limit both hold.</param>
/// <param name="MgFloorPercent">The floor that it keeps, %; null for grey iron.</param>
public sealed record PocketAnswer(
    TreatmentProblem? Problem, TreatmentResult? Treatment, double InoculantKg, double StopWeightKg, double? MgFloorPercent)
{
    /// <summary>Alloy in the pocket, kg; null for grey iron, and where the magnesium is dosed on the weighed mass.</summary>
    public double? AlloyKg { get; init; }

    /// <summary>The iron with the alloy that is really in the pocket; null for grey iron.</summary>
    public TreatedIron? Iron { get; init; }

    /// <summary>The residual magnesium as a band; null where none is known.</summary>
    public TreatmentBand? Band { get; init; }

    /// <summary>Recoveries of the band, %.</summary>
    public (double Least, double Most)? RecoveryBand { get; init; }

    /// <summary>Greatest mass that keeps the floor at the last mould, kg; the fill limit is not in it.</summary>
    public double? LargestIronKg { get; init; }

    public double? CoverKg { get; init; }
    public double? StreamInoculantKg { get; init; }
    public double? MouldInoculantKg { get; init; }
    public double? PearliteKg { get; init; }

    /// <summary>Silicon that is poured, inoculants in it, %; null where the inoculant is not known.</summary>
    public double? SiliconPercent { get; init; }

    public PocketTemperature Temperature { get; init; } = new(null, null);
}

/// <summary>Temperatures on the way, °C; null where a figure of the ladle is missing.</summary>
public sealed record PocketTemperature(double? AfterTreatmentC, double? LastMouldC);

using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>The answer to a <see cref="TreatmentProblem"/>.</summary>
/// <param name="AlloyKg">Alloy for the pocket, kg.</param>
/// <param name="AlloyPercent">Alloy over iron, %.</param>
/// <param name="Iron">The iron that comes out.</param>
/// <param name="AssumedZero">Elements that the balance needs and the base analysis lacks: sulphur or none.</param>
public sealed record TreatmentResult(double AlloyKg, double AlloyPercent, TreatedIron Iron, IReadOnlyList<Element> AssumedZero)
{
    /// <summary>Mass after treatment, kg.</summary>
    public double MassAfterKg => Iron.AtStart.Kg;

    /// <summary>Magnesium at minute 0, %.</summary>
    public double MgAfterTreatmentPercent => Iron.MgPercent;

    /// <summary>Silicon after less silicon before, percentage points.</summary>
    public double SiliconPickupPercent => Iron.SiliconPickupPercent;

    /// <summary>Analysis at minute 0.</summary>
    public Analysis AnalysisAfter => Iron.AtStart.Analysis;

    /// <summary>Residual magnesium at minutes 0 to 30.</summary>
    public IReadOnlyList<ResidualMg> ResidualMg => Iron.ResidualMg;
}

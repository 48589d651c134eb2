using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Operations.Ladles;

/// <summary>The answer that is kept with a pocket card.</summary>
public sealed record StoredTreatment(
    double AlloyKg,
    double AlloyPercent,
    double MassAfterKg,
    double MgAfterTreatmentPercent,
    double SiliconPickupPercent,
    Analysis AnalysisAfter,
    IReadOnlyList<ResidualMg> ResidualMg)
{
    public static StoredTreatment Of(TreatmentResult result) => new(
        result.AlloyKg,
        result.AlloyPercent,
        result.MassAfterKg,
        result.MgAfterTreatmentPercent,
        result.SiliconPickupPercent,
        result.AnalysisAfter,
        result.ResidualMg);
}

using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Sites;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>What the records know that a pocket card needs.</summary>
/// <param name="Bath">Analysis of the bath now.</param>
/// <param name="InFurnaceKg">Liquid in the furnace by its ledger, kg.</param>
/// <param name="HandledKg">All metal that the heat has had, kg: what the ledger's uncertainty is a share of.</param>
/// <param name="Alloy">The treatment alloy; null for grey iron, or where none was named or found.</param>
public sealed record PocketFacts(
    IronFamily Family,
    GradeRecipe? Recipe,
    Ladle Ladle,
    Analysis Bath,
    double InFurnaceKg,
    double HandledKg,
    MaterialComposition? Alloy,
    long? AlloyMaterialId,
    long? AlloyAnalysisId,
    long BathSampleId)
{
    /// <summary>Reads them; the alloy is the recipe's where none is named.</summary>
    public static async Task<PocketFacts> Load(
        RecordsContext db, Heat heat, Ladle ladle, BathNow bath, long? alloyMaterialId, CancellationToken cancellation)
    {
        var grade = await db.Grades.AsNoTracking().SingleAsync(g => g.Id == heat.GradeId, cancellation);
        var alloyCode = grade.Recipe?.TreatmentAlloyCode;
        var alloy = grade.Family == IronFamily.Grey ? null : await db.Materials.AsNoTracking().SingleOrDefaultAsync(
            m => alloyMaterialId != null ? m.Id == alloyMaterialId : m.Code == alloyCode, cancellation);
        return new PocketFacts(
            grade.Family,
            grade.Recipe,
            ladle,
            bath.Metal.Analysis,
            await db.InFurnace(heat.FurnaceId, cancellation),
            await db.Handled(heat, cancellation),
            alloy is null ? null : await db.CompositionOf(alloy.Id, cancellation),
            alloy?.Id,
            alloy?.AnalysisId,
            bath.SampleId);
    }
}

using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Records;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Yard;

/// <summary>What the materials of the yard consist of, for the chain.</summary>
public static class Compositions
{
    /// <summary>
    /// The composition by the analysis in force; null where there is no such material or its yield is not known. One without an analysis is all iron.
    /// </summary>
    public static async Task<MaterialComposition?> CompositionOf(this RecordsContext db, long materialId, RecoveryStage stage, CancellationToken cancellation)
    {
        var material = await db.Materials.AsNoTracking().SingleOrDefaultAsync(m => m.Id == materialId, cancellation);
        if (material?.MetallicYieldPercent is not { } yield) return null;
        var percents = await db.MaterialAnalyses.AsNoTracking()
            .Where(a => a.Id == material.AnalysisId)
            .SelectMany(a => a.Percents)
            .ToListAsync(cancellation);
        return Of(yield, percents, stage);
    }

    /// <summary>Why a material has no composition: nobody knows the material, or its yield.</summary>
    public static async Task<Finding> NoComposition(this RecordsContext db, string path, long materialId, CancellationToken cancellation) =>
        await db.Materials.Where(m => m.Id == materialId).Select(m => m.Name).SingleOrDefaultAsync(cancellation) is { } name
            ? new(path, "material.noYield", name) : new(path, "material.unknown");

    public static MaterialComposition Of(double metallicYieldPercent, IReadOnlyCollection<MaterialPercent> percents, RecoveryStage stage) => new()
    {
        Analysis = Analysis.Of(percents.Select(p => KeyValuePair.Create(p.Element, p.Percent))),
        MetallicYieldPercent = metallicYieldPercent,
        RecoveryPercent = percents
            .Select(p => (p.Element, Percent: stage.Of(p.RecoveryPercent, p.BathRecoveryPercent)))
            .Where(p => p.Percent is not null)
            .ToDictionary(p => p.Element, p => p.Percent!.Value),
    };
}

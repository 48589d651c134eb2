using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Records;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Yard;

/// <summary>What the materials of the yard consist of, for the chain.</summary>
public static class Compositions
{
    /// <summary>The composition by the analysis in force; null where there is no such material. One without an analysis is all iron.</summary>
    public static async Task<MaterialComposition?> CompositionOf(this RecordsContext db, long materialId, CancellationToken cancellation)
    {
        var material = await db.Materials.AsNoTracking().SingleOrDefaultAsync(m => m.Id == materialId, cancellation);
        if (material is null) return null;
        var percents = await db.MaterialAnalyses.AsNoTracking()
            .Where(a => a.Id == material.AnalysisId)
            .SelectMany(a => a.Percents)
            .ToListAsync(cancellation);
        return Of(material.MetallicYieldPercent, percents);
    }

    public static MaterialComposition Of(double metallicYieldPercent, IReadOnlyCollection<MaterialPercent> percents) => new()
    {
        Analysis = Analysis.Of(percents.Select(p => KeyValuePair.Create(p.Element, p.Percent))),
        MetallicYieldPercent = metallicYieldPercent,
        RecoveryPercent = percents
            .Where(p => p.RecoveryPercent is not null)
            .ToDictionary(p => p.Element, p => p.RecoveryPercent!.Value),
    };
}

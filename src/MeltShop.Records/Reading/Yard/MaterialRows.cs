using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Yard;

/// <summary>Reads materials with their analyses in force: two queries, however many there are.</summary>
internal static class MaterialRows
{
    public static async Task<IReadOnlyList<MaterialView>> Load(RecordsContext db, IQueryable<Material> which, CancellationToken ct)
    {
        var materials = await which.AsNoTracking().ToListAsync(ct);
        var ids = materials.Select(m => m.AnalysisId).OfType<long>().ToList();
        var analyses = await db.MaterialAnalyses.AsNoTracking().AsSingleQuery()
            .Include(a => a.Percents).Where(a => ids.Contains(a.Id)).ToDictionaryAsync(a => a.Id, ct);
        return [.. materials.Select(m => View(m, m.AnalysisId is { } id ? analyses.GetValueOrDefault(id) : null))];
    }

    private static MaterialView View(Material m, MaterialAnalysis? analysis) => new(
        m.Id, m.Version, m.Code, m.Name, m.Kind, m.Uses, m.PricePerTonne, m.StockKg, m.MetallicYieldPercent, m.PieceKg,
        m.BulkDensityTonnesPerM3, m.MaxSharePercent, m.Cautions.Split(' ', StringSplitOptions.RemoveEmptyEntries), m.IsDemo, m.IsActive,
        analysis is null ? null : View(analysis));

    private static MaterialAnalysisView View(MaterialAnalysis a) => new(
        a.Id, a.Source, a.SourceKind, a.ObservedAt, a.Reason,
        [.. a.Percents.OrderBy(p => p.Element).Select(p => new MaterialPercentView(p.Element, p.Percent, p.Spread, p.RecoveryPercent, p.BathRecoveryPercent))]);
}

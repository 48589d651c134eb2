using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Records;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>What the pages of a ladle reckon with before anything is recorded: the facts and verdicts of the operations themselves.</summary>
public sealed class LadleForecast(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>What a pocket card needs; null where the heat or the ladle is unknown, or where no bath sample counts.</summary>
    public async Task<PocketFacts?> Facts(
        long heatId, long ladleId, long? alloyMaterialId, long? inoculantMaterialId, PocketExtras extras, CancellationToken ct)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var heat = await db.Heats.AsNoTracking().SingleOrDefaultAsync(h => h.Id == heatId, ct);
        var ladle = await db.Ladles.AsNoTracking().SingleOrDefaultAsync(l => l.Id == ladleId, ct);
        return heat is not null && ladle is not null && await BathNow.Load(db, heat, ct) is { } bath
            ? await PocketFacts.Load(db, heat, ladle, bath, alloyMaterialId, inoculantMaterialId, extras, ct)
            : null;
    }

    /// <summary>How a last-metal sample stands to the poured windows, with carbon from the chain: what a release is judged by.</summary>
    public async Task<IReadOnlyList<WindowVerdict>> LastMetal(long treatedLadleId, long sampleId, CancellationToken ct)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var treated = await db.TreatedLadles.AsNoTracking().SingleAsync(l => l.Id == treatedLadleId, ct);
        var sample = await db.Samples.AsNoTracking().SingleAsync(s => s.Id == sampleId && s.TreatedLadleId == treatedLadleId, ct);
        return await PouredIron.Verdicts(db, treated, sample, ct);
    }
}

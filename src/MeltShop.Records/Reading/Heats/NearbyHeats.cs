using MeltShop.Records.Heats;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Heats;

/// <summary>The heats that something may belong to that was put on a wrong one: those that started about the same time.</summary>
public sealed class NearbyHeats(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>How long before and after a heat others may have started that its facts are mistaken for.</summary>
    public static TimeSpan Reach { get; } = TimeSpan.FromDays(3);

    /// <summary>The heat itself and those around it that were not called off, the latest first, with their ladles.</summary>
    public async Task<IReadOnlyList<NearbyHeat>> Load(long heatId, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var startedAt = await db.Heats.Where(h => h.Id == heatId).Select(h => h.StartedAt).SingleAsync(ct);
        var (from, to) = (startedAt - Reach, startedAt + Reach);
        var heats = await db.Heats.Where(h => h.StartedAt >= from && h.StartedAt <= to && (h.Id == heatId || h.State != HeatState.Cancelled))
            .OrderByDescending(h => h.StartedAt).ThenByDescending(h => h.Id)
            .Select(h => new { h.Id, h.Number, Furnace = db.Furnaces.Single(f => f.Id == h.FurnaceId).Name }).ToListAsync(ct);
        var ids = heats.Select(h => h.Id).ToList();
        var ladles = (await db.TreatedLadles.Where(l => ids.Contains(l.HeatId)).OrderBy(l => l.Ordinal)
            .Select(l => new NearbyLadle(l.Id, l.HeatId, l.Ordinal)).ToListAsync(ct)).ToLookup(l => l.HeatId);
        return [.. heats.Select(h => new NearbyHeat(h.Id, h.Number, h.Furnace, [.. ladles[h.Id]]))];
    }
}

public sealed record NearbyHeat(long Id, string Number, string FurnaceName, IReadOnlyList<NearbyLadle> Ladles);

public sealed record NearbyLadle(long Id, long HeatId, int Ordinal);

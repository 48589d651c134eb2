using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Heats;

/// <summary>What the ledger of a furnace rests on: the last dip or load cell, and what came since, whatever heats lie between.</summary>
/// <param name="DippedAt">When the last dip was; null where the furnace was never dipped.</param>
/// <param name="LevelKg">The liquid that it showed, kg.</param>
/// <param name="PlusMinusKg">How far it may be off, kg; null where nobody said.</param>
/// <param name="CameKg">
/// What was charged and poured back since, or ever, kg: what is known only by its yield. It is read back in time until a share of it, <see cref="LadleContent.Uncertainty"/>, is a full furnace.
/// </param>
/// <param name="CapacityKg">What the furnace holds, kg.</param>
public sealed record LedgerBasis(DateTimeOffset? DippedAt, double LevelKg, double? PlusMinusKg, double CameKg, double CapacityKg)
{
    private const int LinesAtOnce = 500;

    /// <summary>Reads it as it stands now.</summary>
    public static Task<LedgerBasis> Load(RecordsContext db, long furnaceId, CancellationToken ct) => Load(db, furnaceId, null, null, ct);

    /// <summary>Reads it.</summary>
    /// <param name="known">What had been entered until then; null for all.</param>
    /// <param name="until">What had happened until then; null for all.</param>
    internal static async Task<LedgerBasis> Load(RecordsContext db, long furnaceId, DateTimeOffset? known, DateTimeOffset? until, CancellationToken ct)
    {
        IQueryable<FurnaceMetal> lines = db.FurnaceMetals, later = db.FurnaceMetals;
        if (known is { } then) (lines, later) = (lines.Where(m => m.EnteredAt <= then), later.Where(m => m.EnteredAt <= then));
        if (until is { } end) lines = lines.Where(m => m.ObservedAt <= end);
        lines = lines.Where(m => m.FurnaceId == furnaceId && !later.Any(l => l.SupersedesId == m.Id));
        lines = lines.AsNoTracking();
        var dip = await lines.Where(m => m.Kind == FurnaceMetalKind.Dipped && m.LevelKg != null)
            .OrderByDescending(m => m.ObservedAt).ThenByDescending(m => m.Id).FirstOrDefaultAsync(ct);
        var came = lines.Where(m => m.Kind == FurnaceMetalKind.Charged || m.Kind == FurnaceMetalKind.PouredBack);
        var capacity = await db.Furnaces.Where(f => f.Id == furnaceId).Select(f => f.CapacityKg).SingleAsync(ct);
        if (dip is null) return new(null, 0, null, await Came(came, capacity, ct), capacity);
        var kg = await Came(came.Where(m => m.ObservedAt > dip.ObservedAt), capacity, ct);
        foreach (var line in await came.Where(m => m.ObservedAt == dip.ObservedAt).ToListAsync(ct))
            if (await db.FirstOf(line, ct) > await db.FirstOf(dip, ct)) kg += line.Kg;
        return new(dip.ObservedAt, dip.LevelKg!.Value, dip.PlusMinusKg, kg, capacity);
    }

    private static async Task<double> Came(IQueryable<FurnaceMetal> lines, double capacityKg, CancellationToken ct)
    {
        var (kg, some) = (0d, lines);
        while (kg * LadleContent.Uncertainty < capacityKg)
        {
            var read = await some.OrderByDescending(m => m.ObservedAt).ThenByDescending(m => m.Id).Take(LinesAtOnce).Select(m => new { m.ObservedAt, m.Id, m.Kg }).ToListAsync(ct);
            kg += read.Sum(m => m.Kg);
            if (read.Count < LinesAtOnce) break;
            var (at, id) = (read[^1].ObservedAt, read[^1].Id);
            some = lines.Where(m => m.ObservedAt <= at && (m.ObservedAt < at || m.Id < id));
        }

        return kg;
    }
}

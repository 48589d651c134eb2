using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Heats;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>What a heat left in its furnace follows the facts of the heat: else a typing error that was corrected would stand in the next charge.</summary>
internal static class LeftHeel
{
    /// <summary>
    /// Reckons the heels that a heat left anew, after this entry changed something of the heat; does nothing where the heat goes on, or where they stay the same.
    /// </summary>
    /// <param name="reason">Why the heat was corrected; null where something came late.</param>
    public static async Task FollowHeel(this Writing writing, Heat heat, string? reason, CancellationToken cancellation)
    {
        if (heat.ClosedAt is not { } closedAt) return;
        var db = writing.Db;
        var heels = await db.InForce<Heel>().AsNoTracking().Include(h => h.Percents).Where(h => h.FromHeatId == heat.Id && h.FurnaceId == heat.FurnaceId).ToListAsync(cancellation);
        await writing.FollowStart(heat.FurnaceId, closedAt, reason, cancellation);
        if (heels.Count == 0) return;
        var bath = await BathNow.Load(db, heat, closedAt, cancellation);
        var next = await db.Heats.Where(h => h.FurnaceId == heat.FurnaceId && h.StartedAt >= closedAt)
            .OrderBy(h => h.StartedAt).Select(h => (DateTimeOffset?)h.StartedAt).FirstOrDefaultAsync(cancellation);
        var changeKg = await Change(db, writing.Stamp.EntryKey, heat.FurnaceId, next ?? DateTimeOffset.MaxValue, cancellation);
        foreach (var heel in heels)
        {
            var kg = Math.Abs(changeKg) < FurnaceLedger.Dust ? heel.Kg : heel.Kg + changeKg; // below nothing it cannot be right, as the ledger is not: said, not hidden
            var analysis = kg > 0 && bath is not null ? bath.Metal.Analysis : Analysis.Empty;
            var sampleId = kg > 0 ? bath?.SampleId : null;
            var isSame = (heel.Kg, heel.SampleId) == (kg, sampleId)
                && heel.Percents.Select(p => (p.Element, p.Percent)).ToHashSet().SetEquals(analysis.Select(p => (p.Key, p.Value)));
            if (!isSame) await writing.Replace(heel, kg, heel.ObservedAt, reason, sampleId, analysis, cancellation);
        }
    }

    /// <summary>
    /// The heat that started next in a furnace started over what this entry left there; where it did not change that, as where a dip stands between, nothing is done.
    /// </summary>
    public static async Task FollowStart(this Writing writing, long furnaceId, DateTimeOffset from, string? reason, CancellationToken cancellation)
    {
        var db = writing.Db;
        if (await db.Heats.Where(h => h.FurnaceId == furnaceId && h.StartedAt >= from).OrderBy(h => h.StartedAt).FirstOrDefaultAsync(cancellation) is not { } next) return;
        var changeKg = await Change(db, writing.Stamp.EntryKey, furnaceId, next.StartedAt, cancellation);
        if (Math.Abs(changeKg) < FurnaceLedger.Dust) return;
        var former = HeatSaid.Of(next);
        next.HeelKg += changeKg;
        db.Add(HeatSaid.Of(next).Instead(former, writing.Stamp, next.Id, reason));
        await db.SaveChangesAsync(cancellation);
    }

    /// <summary>The same for what came of many heats at once, where the next charge starts from what they left: at most one heat a furnace.</summary>
    public static async Task FollowLastHeels(this Writing writing, IReadOnlySet<long> heatIds, CancellationToken cancellation)
    {
        var db = writing.Db;
        var last = await db.Furnaces.Select(f => db.InForce<Heel>().Where(h => h.FurnaceId == f.Id)
            .OrderByDescending(h => h.ObservedAt).ThenByDescending(h => h.Id).Select(h => h.FromHeatId).FirstOrDefault()).ToListAsync(cancellation);
        foreach (var id in last.OfType<long>().Where(heatIds.Contains))
            await writing.FollowHeel(await db.Heats.SingleAsync(h => h.Id == id, cancellation), reason: null, cancellation);
    }

    /// <summary>What the entry changed of the ledger as the next heat found it, kg: nothing where a dip in between took it up.</summary>
    private static async Task<double> Change(RecordsContext db, Guid entryKey, long furnaceId, DateTimeOffset until, CancellationToken cancellation)
    {
        var before = db.FurnaceMetals.Where(m => m.FurnaceId == furnaceId && m.ObservedAt < until);
        var came = await before.Where(m => m.EntryKey == entryKey).SumAsync(m => m.Kg, cancellation);
        var went = await before.Where(m => db.FurnaceMetals.Any(later => later.EntryKey == entryKey && later.SupersedesId == m.Id)).SumAsync(m => m.Kg, cancellation);
        return came - went;
    }
}

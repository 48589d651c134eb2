using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Heats;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>
/// What heats left in their furnace, and what the next ones started over, follows the facts: else a typing error that was corrected would stand in every charge
/// that came after it. A ledger goes on from heat to heat until somebody dips or a heat is emptied, and so does what is put right.
/// </summary>
internal static class LeftHeel
{
    /// <summary>
    /// So many heats are followed at most: long before, five percent of what was charged since is a full furnace, and a ledger that nobody dipped
    /// in that time tells nothing that the correction could put right.
    /// </summary>
    public const int MostFollowed = 100;

    /// <summary>
    /// Reckons the heels that a heat left anew, after this entry changed something of the heat; does nothing where the heat goes on, or where they stay the same.
    /// </summary>
    /// <param name="reason">Why the heat was corrected; null where something came late.</param>
    public static Task FollowHeel(this Writing writing, Heat heat, string? reason, CancellationToken cancellation) => writing.FollowHeels([heat], reason, cancellation);

    /// <inheritdoc cref="FollowHeel"/>
    /// <param name="heats">The heats that the entry changed: what follows from one of them is not added again for the next.</param>
    public static async Task FollowHeels(this Writing writing, IReadOnlyList<Heat> heats, string? reason, CancellationToken cancellation)
    {
        var followed = new HashSet<long>();
        foreach (var heat in heats.DistinctBy(h => h.Id).OrderBy(h => h.StartedAt))
        {
            if (heat.ClosedAt is not { } closedAt || !followed.Add(heat.Id)) continue;
            await writing.FollowLeft(heat, closedAt, reason, cancellation);
            await writing.FollowStarts(heat.FurnaceId, closedAt, reason, followed, cancellation);
        }
    }

    /// <summary>
    /// The heats that started later in a furnace started over what this entry left there, and left it to the next; where it did not change that, as where a
    /// dip stands between, nothing is done.
    /// </summary>
    public static Task FollowStart(this Writing writing, long furnaceId, DateTimeOffset from, string? reason, CancellationToken cancellation) =>
        writing.FollowStarts(furnaceId, from, reason, [], cancellation);

    private static async Task FollowStarts(
        this Writing writing, long furnaceId, DateTimeOffset from, string? reason, HashSet<long> followed, CancellationToken cancellation)
    {
        var db = writing.Db;
        var most = followed.Count + MostFollowed;
        while (followed.Count < most && await writing.Next(furnaceId, from, followed, cancellation) is { } next)
        {
            var changeKg = await Change(db, writing.Stamp.EntryKey, furnaceId, next.StartedAt, cancellation);
            if (Math.Abs(changeKg) < FurnaceLedger.Dust) return;
            followed.Add(next.Id);
            var former = HeatSaid.Of(next);
            next.HeelKg += changeKg;
            db.Add(HeatSaid.Of(next).Instead(former, writing.Stamp, next.Id, reason));
            await db.SaveChangesAsync(cancellation);
            if (next.ClosedAt is not { } closedAt) return;
            await writing.FollowLeft(next, closedAt, reason, cancellation);
            from = closedAt;
        }
    }

    private static Task<Heat?> Next(this Writing writing, long furnaceId, DateTimeOffset from, IEnumerable<long> except, CancellationToken cancellation)
    {
        var others = except.ToList();
        return writing.Db.Heats.Where(h => h.FurnaceId == furnaceId && h.StartedAt >= from && !others.Contains(h.Id))
            .OrderBy(h => h.StartedAt).ThenBy(h => h.Id).FirstOrDefaultAsync(cancellation);
    }

    private static async Task FollowLeft(this Writing writing, Heat heat, DateTimeOffset closedAt, string? reason, CancellationToken cancellation)
    {
        var db = writing.Db;
        var heels = await db.InForce<Heel>().AsNoTracking().Include(h => h.Percents).Where(h => h.FromHeatId == heat.Id && h.FurnaceId == heat.FurnaceId).ToListAsync(cancellation);
        if (heels.Count == 0) return;
        var bath = await BathNow.Load(db, heat, closedAt, cancellation);
        var next = (await writing.Next(heat.FurnaceId, closedAt, [heat.Id], cancellation))?.StartedAt ?? DateTimeOffset.MaxValue;
        foreach (var heel in heels)
        {
            // Until somebody dipped, which is a heel of its own, or the next heat began.
            var dipped = await db.InForce<Heel>().Where(h => h.FurnaceId == heat.FurnaceId && h.ObservedAt > heel.ObservedAt).MinAsync(h => (DateTimeOffset?)h.ObservedAt, cancellation);
            var changeKg = await Change(db, writing.Stamp.EntryKey, heat.FurnaceId, dipped < next ? dipped.Value : next, cancellation);
            var kg = Math.Abs(changeKg) < FurnaceLedger.Dust ? heel.Kg : heel.Kg + changeKg; // below nothing it cannot be right, as the ledger is not: said, not hidden
            var analysis = kg > 0 && bath is not null ? bath.Metal.Analysis : Analysis.Empty;
            var sampleId = kg > 0 ? bath?.SampleId : null;
            var isSame = (heel.Kg, heel.SampleId) == (kg, sampleId)
                && heel.Percents.Select(p => (p.Element, p.Percent)).ToHashSet().SetEquals(analysis.Select(p => (p.Key, p.Value)));
            if (!isSame) await writing.Replace(heel, kg, heel.ObservedAt, reason, sampleId, analysis, cancellation);
        }
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

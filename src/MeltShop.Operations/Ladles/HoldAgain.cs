using MeltShop.Operations.Storing;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>
/// Holds castings again when something that their release rested on turns out to be another: the release stays readable, and whoever
/// is entitled to it decides anew. Anybody may hold, so the person who corrects does.
/// </summary>
internal static class HoldAgain
{
    /// <summary>The treated ladles whose judgement rests on a sample: it was seen at the decision, or the pocket card started from it.</summary>
    public static async Task<IReadOnlyList<long>> RestingOn(this RecordsContext db, Sample sample, CancellationToken cancellation)
    {
        var ids = await db.Lineage(sample, cancellation);
        var ladles = await db.TreatedLadles.Where(l => l.HeatId == sample.HeatId).Select(l => l.Id).ToListAsync(cancellation);
        var decided = await db.InForce<CastingDecision>()
            .Where(d => ladles.Contains(d.TreatedLadleId) && d.SampleId != null && ids.Contains(d.SampleId.Value))
            .Select(d => d.TreatedLadleId).ToListAsync(cancellation);
        var cards = await db.InForce<PocketCard>().Where(c => ladles.Contains(c.TreatedLadleId))
            .Select(c => new { c.TreatedLadleId, c.Versions }).ToListAsync(cancellation);
        return
        [
            .. decided.Union(cards.Where(c => FormulaVersions.BathSample(c.Versions) is { } used && ids.Contains(used)).Select(c => c.TreatedLadleId)),
        ];
    }

    /// <summary>Holds those of the ladles, and those of their test units, that were released; answers what changed.</summary>
    public static async Task<IReadOnlyList<ChangeNotice>> Hold(
        this Writing writing, IEnumerable<long> ladleIds, string reason, CancellationToken cancellation)
    {
        var ids = ladleIds.ToList();
        var released = await writing.Db.TreatedLadles
            .Where(l => ids.Contains(l.Id) && l.State == TreatedLadleState.Released).ToListAsync(cancellation);
        foreach (var ladle in released)
        {
            writing.Db.Add(Held(writing, ladle.Id, null, reason));
            writing.Step(ladle, TreatedLadleState.Held, reason);
        }

        var apart = (await writing.Db.InForce<CastingDecision>().AsNoTracking().Where(d => ids.Contains(d.TreatedLadleId) && d.TestUnit != null).ToListAsync(cancellation))
            .GroupBy(d => (d.TreatedLadleId, Unit: d.TestUnit!.ToUpperInvariant())).Select(g => g.MaxBy(d => d.Id)!).Where(d => d.Verdict == CastingVerdict.Release).ToList();
        foreach (var unit in apart) writing.Db.Add(Held(writing, unit.TreatedLadleId, unit.TestUnit, reason));
        var others = apart.Select(d => d.TreatedLadleId).Except(released.Select(l => l.Id)).ToList();
        var changed = others.Count == 0 ? [] : await writing.Db.TreatedLadles.Where(l => others.Contains(l.Id)).ToListAsync(cancellation);
        foreach (var ladle in changed) writing.Db.Expect(ladle, ladle.Version);
        await writing.Db.SaveChangesAsync(cancellation);
        return [.. released.Concat(changed).Select(l => new ChangeNotice(ChangeKind.TreatedLadle, l.Id, l.Version))];
    }

    private static CastingDecision Held(Writing writing, long treatedLadleId, string? unit, string reason) => new()
    {
        EntryKey = writing.Stamp.EntryKey,
        PersonId = writing.Stamp.PersonId,
        ObservedAt = writing.Stamp.ObservedAt,
        EnteredAt = writing.Stamp.EnteredAt,
        Reason = reason,
        TreatedLadleId = treatedLadleId,
        Verdict = CastingVerdict.Hold,
        TestUnit = unit,
        FollowsCorrection = true,
    };

    /// <summary>A sample and those that it corrects, one after the other.</summary>
    private static async Task<List<long>> Lineage(this RecordsContext db, Sample sample, CancellationToken cancellation)
    {
        var ids = new List<long> { sample.Id };
        for (var former = sample.SupersedesId; former is { } id;)
        {
            ids.Add(id);
            former = await db.Samples.Where(s => s.Id == id).Select(s => s.SupersedesId).SingleAsync(cancellation);
        }

        return ids;
    }
}

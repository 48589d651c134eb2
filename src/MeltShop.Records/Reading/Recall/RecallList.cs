using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Recall;

/// <summary>The treated ladles, with their castings, that suspect iron may be in: for whatever question finds where it begins.</summary>
public static class RecallList
{
    /// <param name="starts">Where it begins.</param>
    /// <param name="heels">How many heats the iron that stays in a furnace is followed into.</param>
    public static async Task<RecallView> Of(RecordsContext db, IEnumerable<RecallStart> starts, int heels, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(db);
        var reach = new RecallReach(db, heels);
        await reach.Follow(starts, ct);
        var ids = reach.Ladles.Keys.ToList();
        var ladles = (await TreatedLadleRows.Load(db, db.TreatedLadles.Where(l => ids.Contains(l.Id)), ct)).Where(l => l.Tap is not null).ToList();
        var heatIds = reach.Heats.Keys.Concat(ladles.Select(l => l.HeatId)).Distinct().ToList();
        var heats = await (
            from heat in db.Heats
            join grade in db.Grades on heat.GradeId equals grade.Id
            where heatIds.Contains(heat.Id)
            select new { heat.Id, heat.Number, heat.StartedAt, Grade = grade.Code }).ToDictionaryAsync(h => h.Id, ct);
        var moulds = (await db.InForce<PouredMould>().AsNoTracking().Where(m => ids.Contains(m.TreatedLadleId) && !m.IsWithdrawn)
            .OrderBy(m => m.ObservedAt).Select(m => new { m.TreatedLadleId, m.Label }).ToListAsync(ct)).ToLookup(m => m.TreatedLadleId, m => m.Label);
        var certificates = (await db.Certificates.AsNoTracking().Where(c => ids.Contains(c.TreatedLadleId)).OrderBy(c => c.Revision)
            .Select(c => new { c.TreatedLadleId, c.Id, c.Number, c.Revision }).ToListAsync(ct))
            .ToLookup(c => c.TreatedLadleId, c => new RecallCertificate(c.Id, c.Number, c.Revision));
        var names = ladles.ToDictionary(l => l.Id, l => $"{heats[l.HeatId].Number}/{l.Ordinal}");
        var rows = ladles.Select(l =>
        {
            var (heat, reached) = (heats[l.HeatId], reach.Ladles[l.Id]);
            var through = reached.ThroughLadle is { } ladle ? names.GetValueOrDefault(ladle) : reached.ThroughHeat is { } id ? heats[id].Number : null;
            return new RecallRow(
                l, heat.Number, heat.StartedAt, l.Decision?.GradeCode ?? heat.Grade, reached.Way, through, reached.Heels, reached.IsSure, [.. moulds[l.Id]], [.. certificates[l.Id]]);
        });
        var withCastings = ladles.Select(l => l.HeatId).ToHashSet();
        return new(
            true, [.. rows.OrderBy(r => r.StartedAt).ThenBy(r => r.Ladle.Ordinal).Take(Facts.Most)],
            [.. reach.Heats.Keys.Where(id => !withCastings.Contains(id)).Select(id => heats[id].Number).Order(StringComparer.Ordinal)], ladles.Count > Facts.Most);
    }
}

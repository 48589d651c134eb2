using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>A heat with samples that an instrument measured.</summary>
/// <param name="Samples">How many of them.</param>
public sealed record MeasuredHeat(long HeatId, string Number, string Grade, int Samples, DateTimeOffset First, DateTimeOffset Last);

/// <summary>Reads the heats that an instrument measured in some time, the latest first.</summary>
internal static class MeasuredHeats
{
    /// <summary>At most one more than <see cref="Facts.Most"/>.</summary>
    public static async Task<IReadOnlyList<MeasuredHeat>> Load(RecordsContext db, long instrumentId, DoubtedTime time, CancellationToken ct)
    {
        var (since, until) = (time.Since ?? DateTimeOffset.MinValue, time.Until ?? DateTimeOffset.MaxValue);
        var samples = await db.InForce<Sample>().Where(s => s.InstrumentId == instrumentId && s.ObservedAt >= since && s.ObservedAt < until)
            .GroupBy(s => s.HeatId).Select(g => new { g.Key, Count = g.Count(), First = g.Min(s => s.ObservedAt), Last = g.Max(s => s.ObservedAt) })
            .OrderByDescending(g => g.Last).ThenByDescending(g => g.Key).Take(Facts.Most + 1).ToListAsync(ct);
        var ids = samples.ConvertAll(s => s.Key);
        var heats = await db.Heats.Where(h => ids.Contains(h.Id)).Select(h => new { h.Id, h.Number, Grade = db.Grades.Single(g => g.Id == h.GradeId).Code }).ToDictionaryAsync(h => h.Id, ct);
        return [.. samples.Select(s => new MeasuredHeat(s.Key, heats[s.Key].Number, heats[s.Key].Grade, s.Count, s.First, s.Last))];
    }
}

using MeltShop.Records.Ladles;
using MeltShop.Records.Sites;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>Ladles and treatment stations with their figures, each with its band and where it comes from.</summary>
public sealed class EquipmentPage(IDbContextFactory<RecordsContext> contexts)
{
    public async Task<EquipmentView> Load(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var ladles = await db.Ladles.AsNoTracking().OrderBy(l => l.Code).Take(Facts.Most + 1).ToListAsync(ct);
        var isMore = ladles.Count > Facts.Most;
        if (isMore) ladles.RemoveAt(Facts.Most);
        var used = await LastUsed(db, ct);
        var ids = ladles.Select(l => l.Id).ToList();
        // The last of each kind alone: what was said before it would count towards the most that is read.
        var last = db.LadleFigures.Where(f => ids.Contains(f.LadleId) && !db.LadleFigures.Any(later => later.LadleId == f.LadleId && later.Kind == f.Kind && later.Id > f.Id));
        var figures = (await db.Rows(last, ct)).ToLookup(r => r.Fact.LadleId);
        return new([.. ladles.InNaturalOrder(l => l.Code).Select(l => new EquipmentLadle(
            LadleEquipment.Of(l, used.TryGetValue(l.Id, out var time) ? time : null), l.Version, l.HasLid, l.IsActive,
            [.. figures[l.Id].OrderBy(r => r.Fact.Kind).Select(r => new LadleFigureView(
                r.Origin, r.Fact.Kind, r.Fact.Value, r.Fact.Least, r.Fact.Most, r.Fact.Standing, r.Fact.Source))]))], isMore);
    }

    /// <summary>When each ladle was tapped into last.</summary>
    internal static Task<Dictionary<long, DateTimeOffset>> LastUsed(RecordsContext db, CancellationToken ct) => (
        from tap in db.InForce<Tap>()
        join treated in db.TreatedLadles on tap.TreatedLadleId equals treated.Id
        group tap.ObservedAt by treated.LadleId into taps
        select new { taps.Key, Last = taps.Max() }).ToDictionaryAsync(t => t.Key, t => t.Last, ct);
}

/// <param name="IsMore">There are more ladles than are listed.</param>
public sealed record EquipmentView(IReadOnlyList<EquipmentLadle> Ladles, bool IsMore);

/// <param name="Figures">The last of each kind that somebody said.</param>
public sealed record EquipmentLadle(LadleEquipment Ladle, Guid Version, bool? HasLid, bool IsActive, IReadOnlyList<LadleFigureView> Figures);

/// <inheritdoc cref="LadleFigure"/>
public sealed record LadleFigureView(
    Origin Origin, LadleFigureKind Kind, double Value, double? Least, double? Most, FigureStanding Standing, string Source);

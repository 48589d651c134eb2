using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.History;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>Reads the samples of a trend.</summary>
public sealed class TrendPage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Samples on one chart.</summary>
    public const int Most = 1000;

    /// <param name="filter">What is drawn.</param>
    /// <param name="after">Where the trend before ended; null for the latest.</param>
    /// <param name="ct">Stops the reading.</param>
    public async Task<TrendView> Load(TrendFilter filter, HistoryPlace? after = null, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(filter);
        await using var db = await contexts.CreateDbContextAsync(ct);
        var found = await HistoryQuery.Of(db, new(filter.GradeId, filter.FurnaceId), after, ct);
        var heats = await found.Take(Most + 1).Select(h => new { h.Id, h.Number, h.StartedAt, h.GradeId }).ToListAsync(ct);
        var rows = TrendQuery.Points(filter, await TrendQuery.Of(db, filter, heats.ConvertAll(h => h.Id)).ToListAsync(ct)).ToLookup(p => p.HeatId);

        // A heat is shown whole or left to the next page.
        var (count, fits) = (0, 0);
        while (fits < Math.Min(heats.Count, Most) && (fits == 0 || count + rows[heats[fits].Id].Count() <= Most)) count += rows[heats[fits++].Id].Count();
        var shown = heats.GetRange(0, fits);
        var points = shown.SelectMany(h => rows[h.Id].Select(p => p with { HeatNumber = h.Number })).ToList();
        var ids = points.ConvertAll(p => p.SampleId);
        var corrected = (await db.Samples.Where(s => s.SupersedesId != null && ids.Contains(s.SupersedesId.Value)).Select(s => s.SupersedesId!.Value).ToListAsync(ct)).ToHashSet();
        var names = await db.Instruments.ToDictionaryAsync(i => i.Id, i => i.Name, ct);
        var firsts = await Firsts(db, shown.ToDictionary(h => h.Id, h => h.GradeId), ct);
        var first = filter.Treated ? await FirstsOfLadles(db, shown.ConvertAll(h => h.Id), ct) : firsts.Select(f => f.SampleId).ToHashSet();
        var standing = points.Where(p => !corrected.Contains(p.SampleId))
            .Select(p => p with { Instrument = names.GetValueOrDefault(p.InstrumentId), IsFirst = first.Contains(p.SampleId) }).ToList();
        long[] chosen = filter.InstrumentId is { } asked && (asked == TrendFilter.NoInstrument || names.ContainsKey(asked)) ? [asked] : [];
        List<TrendPoint> drawn = [.. standing.Where(p => filter.InstrumentId is not { } one || p.InstrumentId == one).OrderBy(p => p.At).ThenBy(p => p.SampleId)];
        return new(
            drawn,
            firsts,
            [.. standing.Select(p => p.InstrumentId).Union(chosen).Select(id => new TrendInstrument(id, names.GetValueOrDefault(id))).OrderBy(i => i.Name, NaturalOrder.Names)],
            firsts.Count == 0 ? [] : await WindowChanges.Since(db, firsts[0].At, ct),
            fits < heats.Count ? new(shown[^1].StartedAt, shown[^1].Id) : null)
        {
            TakenAsZero = [.. drawn.SelectMany(p => p.TakenAsZero).Distinct().Order()],
        };
    }

    private static async Task<IReadOnlyList<FirstSample>> Firsts(RecordsContext db, Dictionary<long, long> grades, CancellationToken ct)
    {
        var heats = grades.Keys.ToList();
        var samples = await db.InForce<Sample>().Where(s => heats.Contains(s.HeatId) && s.Kind == SampleKind.Bath && s.Means.Count > 0)
            .Select(s => new
            {
                s.Id, s.HeatId, s.ObservedAt,
                TellsCarbon = !s.GreyFracture || db.Instruments.Any(i => i.Id == s.InstrumentId && i.Kind == InstrumentKind.Combustion),
                Unseen = s.Burns.Where(b => !b.SetAside).SelectMany(b => b.Readings).Where(r => r.BelowDetection).Select(r => r.Element).ToList(),
            }).ToListAsync(ct);
        var firsts = samples.GroupBy(s => s.HeatId).Select(g => g.MinBy(s => (s.ObservedAt, s.Id))!).ToList();
        var ids = firsts.ConvertAll(s => s.Id);
        var means = (await db.SampleMeans.AsNoTracking().Where(m => ids.Contains(m.SampleId)).ToListAsync(ct)).ToLookup(m => m.SampleId);
        return
        [
            .. firsts.OrderBy(s => s.ObservedAt).Select(s => new FirstSample(
                s.Id, s.HeatId, grades[s.HeatId], s.ObservedAt,
                Analysis.Of(means[s.Id].Where(m => s.TellsCarbon || m.Element != Element.C).Select(m => KeyValuePair.Create(m.Element, m.Percent))))
            {
                Unseen = s.Unseen,
            }),
        ];
    }

    private static async Task<HashSet<long>> FirstsOfLadles(RecordsContext db, List<long> heats, CancellationToken ct)
    {
        var samples = await db.InForce<Sample>().Where(s => heats.Contains(s.HeatId) && SampleKinds.Treated.Contains(s.Kind) && s.Means.Count > 0)
            .Select(s => new { s.Id, s.TreatedLadleId, s.ObservedAt }).ToListAsync(ct);
        return [.. samples.GroupBy(s => s.TreatedLadleId).Select(g => g.MinBy(s => (s.ObservedAt, s.Id))!.Id)];
    }
}

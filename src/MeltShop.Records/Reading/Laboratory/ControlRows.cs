using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>Reads control samples and the materials that they were made on.</summary>
internal static class ControlRows
{
    /// <summary>More checks than a chart shows.</summary>
    public const int Most = 1000;

    /// <summary>
    /// The last control samples of each instrument that are in force, in their order. Where there are more, the first of each reference
    /// material come before them: they set its limits, which else would wander with what is read.
    /// </summary>
    public static async Task<ILookup<long, ControlSampleView>> Load(RecordsContext db, IReadOnlyList<long> instruments, CancellationToken ct)
    {
        var rows = await Load(db, instruments.Select(id => Last(db, id)), ct);
        var firsts = rows.GroupBy(r => r.Fact.InstrumentId).Where(g => g.Count() == Most)
            .SelectMany(g => g.Select(r => r.Fact.ReferenceMaterialId).Distinct(), (g, reference) => First(db, g.Key, reference)).ToList();
        if (firsts.Count > 0) rows = [.. (await Load(db, firsts, ct)).Concat(rows).DistinctBy(r => r.Fact.Id)];
        return rows.ToLookup(r => r.Fact.InstrumentId, View);
    }

    private static Task<List<FactRow<ControlSample>>> Load(RecordsContext db, IEnumerable<IQueryable<ControlSample>> which, CancellationToken ct)
    {
        var ids = which.Select(checks => checks.Select(c => c.Id)).Aggregate(Queryable.Concat);
        return (
            from control in db.ControlSamples.Where(c => ids.Contains(c.Id)).Include(c => c.Readings).AsNoTracking()
            join person in db.Users on control.PersonId equals person.Id
            orderby control.ObservedAt, control.Id
            select new FactRow<ControlSample>(control, person.DisplayName, null, null, null, null)).ToListAsync(ct);
    }

    private static IQueryable<ControlSample> First(RecordsContext db, long instrumentId, long referenceId) => db.InForce<ControlSample>()
        .Where(c => c.InstrumentId == instrumentId && c.ReferenceMaterialId == referenceId)
        .OrderBy(c => c.ObservedAt).ThenBy(c => c.Id).Take(ControlSeries.Baseline);

    /// <summary>The checks of one instrument: an index answers it from its end.</summary>
    public static IQueryable<ControlSample> Last(RecordsContext db, long instrumentId) => db.InForce<ControlSample>()
        .Where(c => c.InstrumentId == instrumentId).OrderByDescending(c => c.ObservedAt).ThenByDescending(c => c.Id).Take(Most);

    /// <summary>In the order of their codes.</summary>
    public static async Task<IReadOnlyList<ReferenceView>> References(RecordsContext db, CancellationToken ct) =>
    [
        .. (await db.ReferenceMaterials.AsNoTracking().Include(r => r.Values).ToListAsync(ct)).InNaturalOrder(r => r.Code).Select(r => new ReferenceView(
            r.Id, r.Code, r.Name, r.Certificate, r.IsActive, [.. r.Values.OrderBy(v => v.Element).Select(v => new CertifiedView(v.Element, v.Percent, v.PlusMinus))])),
    ];

    private static ControlSampleView View(FactRow<ControlSample> row) => new(
        row.Origin, row.Fact.ReferenceMaterialId, row.Fact.Remarks,
        [.. row.Fact.Readings.GroupBy(r => r.Element).OrderBy(g => g.Key).Select(g => new MeanView(g.Key, g.Average(r => r.Percent), g.Count()))]);
}

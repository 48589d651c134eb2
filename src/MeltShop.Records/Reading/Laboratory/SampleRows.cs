using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>Reads samples with burns, readings and means: six statements, however many there are.</summary>
internal static class SampleRows
{
    public static Task<IReadOnlyList<SampleView>> Load(RecordsContext db, IQueryable<Sample> which, CancellationToken ct) => Load(db, which, null, ct);

    public static async Task<IReadOnlyList<SampleView>> Load(RecordsContext db, IQueryable<Sample> which, DateTimeOffset? known, CancellationToken ct)
    {
        var rows = await db.Rows(which.Include(s => s.Burns).ThenInclude(b => b.Readings).Include(s => s.Means).Include(s => s.Figures), known, ct);
        var used = rows.Select(r => r.Fact.InstrumentId).OfType<long>().Distinct().ToList();
        var instruments = used.Count == 0 ? [] : (await InstrumentRows.Load(db.Instruments.Where(i => used.Contains(i.Id)), ct)).ToDictionary(i => i.Id);
        return [.. rows.Select(r => View(r, r.Fact.InstrumentId is { } id ? instruments[id] : null))];
    }

    /// <summary>The last sample in force of some kinds in a heat, by the instant at which it was taken.</summary>
    public static async Task<SampleView?> Last(RecordsContext db, long heatId, IReadOnlyList<SampleKind> kinds, CancellationToken ct)
    {
        var last = db.InForce<Sample>().Where(s => s.HeatId == heatId && kinds.Contains(s.Kind))
            .OrderByDescending(s => s.ObservedAt).ThenByDescending(s => s.Id).Select(s => s.Id).Take(1);
        return (await Load(db, db.Samples.Where(s => last.Contains(s.Id)), null, ct)).SingleOrDefault();
    }

    private static SampleView View(FactRow<Sample> row, InstrumentView? instrument) => new(
        row.Origin, row.Fact.HeatId, row.Fact.TreatedLadleId, row.Fact.Kind, row.Fact.CoinNumber, row.Fact.Remarks,
        [.. row.Fact.Burns.OrderBy(b => b.Ordinal).Select(View)],
        [.. row.Fact.Means.OrderBy(m => m.Element).Select(m => new MeanView(m.Element, m.Percent, m.Count))])
    {
        Instrument = instrument,
        GreyFracture = row.Fact.GreyFracture,
        IsMeanOnly = row.Fact.IsMeanOnly,
        CoinOnItsWayId = row.Fact.CoinOnItsWayId,
        Figures = [.. row.Fact.Figures.OrderBy(f => f.Quantity).Select(f => new FigureView(f.Quantity, f.Value, f.InstrumentText))],
    };

    private static BurnView View(Burn burn) => new(
        burn.Ordinal, burn.SetAside, burn.SetAsideReason,
        [.. burn.Readings.OrderBy(r => r.Element).Select(r => new ReadingView(r.Element, r.Percent, r.BelowDetection, r.InstrumentText))]);
}

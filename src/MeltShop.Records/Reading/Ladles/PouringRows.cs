using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>Reads what was poured from one ladle.</summary>
internal static class PouringRows
{
    public static async Task<PouringView> Load(RecordsContext db, TreatedLadleView treated, CancellationToken ct)
    {
        var times = await LadleTimesRows.One(db, treated.Id, null, ct);
        var moulds = await db.Rows(db.PouredMoulds.Where(m => m.TreatedLadleId == treated.Id), ct);
        var rests = await db.Rows(db.LadleRests.Where(r => r.TreatedLadleId == treated.Id), ct);
        var inoculations = await db.Rows(db.LadleInoculations.Where(i => i.TreatedLadleId == treated.Id), ct);
        var doses = await db.Rows(db.MagnesiumDoses.Where(d => d.TreatedLadleId == treated.Id), ct);
        var back = await db.Rows(db.FurnaceMetals.Where(m => m.TreatedLadleId == treated.Id && m.Kind == FurnaceMetalKind.PouredBack), ct);
        var materialIds = inoculations.Select(i => (long?)i.Fact.MaterialId).Concat(doses.Select(d => d.Fact.MaterialId)).OfType<long>().Distinct().ToList();
        var names = await db.Materials.Where(m => materialIds.Contains(m.Id)).ToDictionaryAsync(m => m.Id, m => m.Name, ct);
        var others = rests.Select(r => r.Fact.IntoLadleId).OfType<long>().ToList();
        var ordinals = await db.TreatedLadles.Where(l => others.Contains(l.Id)).ToDictionaryAsync(l => l.Id, l => l.Ordinal, ct);
        var came = await Came(db, treated.Id, ct);
        return new(
            times,
            [.. moulds.Select(r => new MouldView(Entry(r), r.Fact.Label, r.Fact.FirstAt, r.Fact.Kg, r.Fact.LateFor, r.Fact.StopAt))],
            [.. rests.Select(r => new RestView(Entry(r), r.Fact.IntoLadleId, Ordinal(r.Fact), r.Fact.Kg, r.Fact.MixedMgPercent))],
            [.. inoculations.Select(r => new InoculationView(Entry(r), r.Fact.Place, names[r.Fact.MaterialId], r.Fact.Kg, r.Fact.Lot))],
            [.. doses.Select(r => new DoseView(r.Origin, r.Fact.MaterialId is { } id ? names[id] : null, r.Fact.Kg, r.Fact.WireMetres, r.Fact.FeedSeconds, r.Fact.MgPercent, r.Fact.MinutesToFloor))],
            [.. back.Select(r => new BackView(r.Origin, r.Fact.Kg))],
            came.Where(c => c.Entry.Stands).Sum(c => c.Kg))
        {
            Came = came,
            LowSources = await LowSources.Of(db, treated.Id, ct),
        };

        int? Ordinal(LadleRest rest) => rest.IntoLadleId is { } id ? ordinals[id] : null;
    }

    private static async Task<IReadOnlyList<CameView>> Came(RecordsContext db, long id, CancellationToken ct)
    {
        var rows = await db.Rows(db.LadleRests.Where(r => r.IntoLadleId == id), ct);
        var ids = rows.Select(r => r.Fact.TreatedLadleId).Distinct().ToList();
        var from = await (
            from ladle in db.TreatedLadles
            join heat in db.Heats on ladle.HeatId equals heat.Id
            where ids.Contains(ladle.Id)
            select new { ladle.Id, ladle.Ordinal, heat.Number }).ToDictionaryAsync(l => l.Id, ct);
        return
        [
            .. rows.Select(r => new CameView(
                Entry(r), r.Fact.TreatedLadleId, from[r.Fact.TreatedLadleId].Ordinal, from[r.Fact.TreatedLadleId].Number, r.Fact.Kg, r.Fact.CameMgPercent,
                r.Fact.MixedMgPercent, r.Fact.SampleId)
            {
                MixedMgBand = r.Fact is { MixedMgLeastPercent: { } least, MixedMgMostPercent: { } most } ? (least, most) : null,
            }),
        ];
    }

    private static LadleEntry Entry<TFact>(FactRow<TFact> row)
        where TFact : Keeping.Fact, IWithdrawable => new(row.Origin, row.Fact.IsWithdrawn);
}

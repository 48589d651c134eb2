using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>Reads treated ladles with all that was recorded about them: six statements, however many there are.</summary>
internal static class TreatedLadleRows
{
    public static Task<IReadOnlyList<TreatedLadleView>> Load(RecordsContext db, IQueryable<TreatedLadle> which, CancellationToken ct) =>
        Load(db, which, null, ct);

    public static async Task<IReadOnlyList<TreatedLadleView>> Load(
        RecordsContext db, IQueryable<TreatedLadle> which, DateTimeOffset? known, CancellationToken ct)
    {
        var ladles = await (
            from treated in which.AsNoTracking()
            join ladle in db.Ladles on treated.LadleId equals ladle.Id
            orderby treated.HeatId, treated.Ordinal
            select new { Treated = treated, ladle.Code, ladle.Name, ladle.FillLimitKg }).Take(Facts.Most + 1).ToListAsync(ct);
        var ids = ladles.Select(l => l.Treated.Id).ToList();
        var cards = (await Cards(db, ids, known, ct)).ToLookup(c => c.LadleId, c => c.Card);
        var taps = (await db.Rows(db.Taps.Where(t => ids.Contains(t.TreatedLadleId)), known, ct)).ToLookup(r => r.Fact.TreatedLadleId, View);
        var decisions = await Decisions(db, ids, known, ct);
        var came = (await db.InForce<LadleRest>().Where(r => r.IntoLadleId != null && ids.Contains(r.IntoLadleId.Value) && !r.IsWithdrawn)
            .GroupBy(r => r.IntoLadleId!.Value).Select(g => new { g.Key, Kg = g.Sum(r => r.Kg) }).ToListAsync(ct)).ToDictionary(g => g.Key, g => g.Kg);
        return
        [
            .. ladles.Select(l => new TreatedLadleView(
                l.Treated.Id, l.Treated.Version, l.Treated.HeatId, l.Treated.Ordinal, l.Treated.LadleId, l.Code, l.Name, l.Treated.State,
                l.Treated.ReactionEndedAt, [.. cards[l.Treated.Id]], [.. taps[l.Treated.Id]], [.. decisions[l.Treated.Id]])
            {
                FillLimitKg = l.FillLimitKg,
                CameKg = came.GetValueOrDefault(l.Treated.Id),
            }),
        ];
    }

    private static async Task<ILookup<long, CastingDecisionView>> Decisions(RecordsContext db, List<long> ids, DateTimeOffset? known, CancellationToken ct)
    {
        var rows = await db.Rows(db.CastingDecisions.Where(d => ids.Contains(d.TreatedLadleId)), known, ct);
        var gradeIds = rows.Select(r => r.Fact.GradeId).OfType<long>().ToList();
        var codes = gradeIds.Count == 0 ? [] : await db.Grades.Where(g => gradeIds.Contains(g.Id)).ToDictionaryAsync(g => g.Id, g => g.Code, ct);
        return rows.ToLookup(r => r.Fact.TreatedLadleId, r => new CastingDecisionView(r.Origin, r.Fact.Verdict, r.Fact.SampleId, r.Fact.FollowsCorrection)
        {
            Seen = r.Fact.Seen,
            TestUnit = r.Fact.TestUnit,
            WasSigned = r.Fact.WasSigned,
            GradeCode = r.Fact.GradeId is { } id ? codes[id] : null,
            ReMarking = r.Fact.ReMarking,
            Consent = r.Fact.Consent,
        });
    }

    private static TapView View(FactRow<Tap> row) => new(
        row.Origin, row.Fact.Kg, row.Fact.TemperatureC, row.Fact.MgAfterTreatmentPercent, row.Fact.MinutesToFloor)
    {
        GrossKg = row.Fact.GrossKg,
        TareKg = row.Fact.TareKg,
        FromTreatedLadleId = row.Fact.FromTreatedLadleId,
        MgLeastPercent = row.Fact.MgLeastPercent,
        MgMostPercent = row.Fact.MgMostPercent,
    };

    private static async Task<IEnumerable<(long LadleId, PocketCardView Card)>> Cards(
        RecordsContext db, List<long> ladleIds, DateTimeOffset? known, CancellationToken ct)
    {
        var rows = await db.Rows(db.PocketCards.Where(c => ladleIds.Contains(c.TreatedLadleId)), known, ct);
        var ids = rows.SelectMany(r => new[] { r.Fact.AlloyMaterialId, r.Fact.InoculantMaterialId, r.Fact.CoverMaterialId, r.Fact.PearliteMaterialId }).OfType<long>().Distinct().ToList();
        var materials = await db.Materials.Where(m => ids.Contains(m.Id)).ToDictionaryAsync(m => m.Id, m => (m.Code, m.Name), ct);
        return rows.Select(r => (r.Fact.TreatedLadleId, View(r, materials)));
    }

    private static PocketCardView View(FactRow<PocketCard> row, Dictionary<long, (string Code, string Name)> materials)
    {
        var card = row.Fact;
        (string Code, string Name)? alloy = card.AlloyMaterialId is { } id ? materials[id] : null;
        var inoculant = materials[card.InoculantMaterialId];
        return new(
            row.Origin, card.PlannedKg, card.TemperatureC, card.BaseSulphurPercent, card.TargetMgPercent, card.MgFloorPercent,
            card.MinutesToLastMould, card.AlloyMaterialId, alloy?.Code, alloy?.Name, card.AlloyKg, card.InoculantMaterialId, inoculant.Code,
            inoculant.Name, card.InoculantKg, card.StopWeightKg, card.Problem, card.Answer, card.Versions)
        {
            Process = card.Process,
            NeededAlloyKg = card.NeededAlloyKg,
            LargestIronKg = card.LargestIronKg,
            CoverName = Name(card.CoverMaterialId),
            CoverKg = card.CoverKg,
            StreamInoculantKg = card.StreamInoculantKg,
            MouldInoculantKg = card.MouldInoculantKg,
            PearliteName = Name(card.PearliteMaterialId),
            PearliteKg = card.PearliteKg,
            AlloyLot = card.AlloyLot,
            CoverLot = card.CoverLot,
            InoculantLot = card.InoculantLot,
            PearliteLot = card.PearliteLot,
            Checks = card.Checks,
        };

        string? Name(long? id) => id is { } known ? materials[known].Name : null;
    }
}

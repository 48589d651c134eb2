using System.Globalization;
using MeltShop.Records.Castings;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Recall;

/// <summary>Where what was asked for begins; null where nothing has that name.</summary>
internal static class RecallStarts
{
#pragma warning disable CA1304, CA1311, CA1862 // translated to SQL
    public static Task<IReadOnlyList<RecallStart>?> Of(RecordsContext db, RecallQuestion question, CancellationToken ct) => question.From switch
    {
        RecallFrom.Heat => Heat(db, question.Of, ct),
        RecallFrom.Ladle => Ladle(db, question, ct),
        RecallFrom.Certificate => Certificate(db, question.Of, ct),
        RecallFrom.Instrument => Instrument(db, question, ct),
        _ => Material(db, question, ct),
    };

    private static async Task<IReadOnlyList<RecallStart>?> Heat(RecordsContext db, string number, CancellationToken ct)
    {
        var upper = number.ToUpperInvariant();
        return await db.Heats.Where(h => h.Number.ToUpper() == upper).Select(h => (long?)h.Id).SingleOrDefaultAsync(ct) is { } id ? [RecallStart.Heat(id)] : null;
    }

    private static async Task<IReadOnlyList<RecallStart>?> Ladle(RecordsContext db, RecallQuestion question, CancellationToken ct)
    {
        var upper = question.Of.ToUpperInvariant();
        if (upper.LastIndexOf('/') is > 0 and var slash && int.TryParse(upper[(slash + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var ordinal))
        {
            var number = upper[..slash];
            var filling = await db.TreatedLadles.Where(l => l.Ordinal == ordinal && db.Heats.Any(h => h.Id == l.HeatId && h.Number.ToUpper() == number))
                .Select(l => (long?)l.Id).SingleOrDefaultAsync(ct);
            return filling is { } id ? [RecallStart.Ladle(id)] : null;
        }

        if (await db.Ladles.Where(l => l.Code.ToUpper() == upper).Select(l => (long?)l.Id).SingleOrDefaultAsync(ct) is not { } ladleId) return null;
        var fillings = await db.InForce<Tap>().Where(t => db.TreatedLadles.Any(l => l.Id == t.TreatedLadleId && l.LadleId == ladleId))
            .Between(question).Select(t => t.TreatedLadleId).ToListAsync(ct);
        return [.. fillings.Distinct().Select(id => RecallStart.Ladle(id))];
    }

    private static async Task<IReadOnlyList<RecallStart>?> Certificate(RecordsContext db, string of, CancellationToken ct)
    {
        var (upper, lower) = (of.ToUpperInvariant(), of.ToLowerInvariant());
        var ladles = await db.Certificates.Where(c => c.Number.ToUpper() == upper || c.Sha256 == lower).Select(c => c.TreatedLadleId).Distinct().ToListAsync(ct);
        return ladles.Count == 0 ? null : [.. ladles.Select(id => RecallStart.Ladle(id))];
    }

    private static async Task<IReadOnlyList<RecallStart>?> Instrument(RecordsContext db, RecallQuestion question, CancellationToken ct)
    {
        var upper = question.Of.ToUpperInvariant();
        if (await db.Instruments.Where(i => i.Code.ToUpper() == upper || i.Name.ToUpper() == upper).Select(i => (long?)i.Id).FirstOrDefaultAsync(ct) is not { } id) return null;
        var samples = await db.InForce<Sample>().Where(s => s.InstrumentId == id).Between(question).Select(s => new { s.HeatId, s.TreatedLadleId }).Distinct().ToListAsync(ct);
        return [.. samples.Select(s => s.TreatedLadleId is { } ladle ? RecallStart.Ladle(ladle) : RecallStart.Heat(s.HeatId))];
    }

    private static async Task<IReadOnlyList<RecallStart>?> Material(RecordsContext db, RecallQuestion question, CancellationToken ct)
    {
        var upper = question.Of.ToUpperInvariant();
        if (await db.Materials.Where(m => m.Code.ToUpper() == upper || m.Name.ToUpper() == upper).Select(m => (long?)m.Id).FirstOrDefaultAsync(ct) is not { } id) return null;
        var cards = await db.InForce<PocketCard>().AsNoTracking().Between(question)
            .Where(c => c.AlloyMaterialId == id || c.CoverMaterialId == id || c.InoculantMaterialId == id || c.PearliteMaterialId == id).ToListAsync(ct);
        var inoculations = await db.InForce<LadleInoculation>().AsNoTracking().Between(question).Where(i => i.MaterialId == id && !i.IsWithdrawn).ToListAsync(ct);
        var weighings = await db.InForce<Weighing>().AsNoTracking().Between(question).Where(w => w.MaterialId == id)
            .GroupBy(w => new { w.HeatId, w.Lot }).Select(g => new { g.Key.HeatId, g.Key.Lot, From = g.Min(w => w.ObservedAt) }).ToListAsync(ct);
        return
        [
            .. cards.SelectMany(c => Lots(c, id).Select(lot => (c.TreatedLadleId, lot))).Concat(inoculations.Select(i => (i.TreatedLadleId, i.Lot)))
                .Where(used => IsOf(used.Item2, question.Lot)).Select(used => RecallStart.Ladle(used.TreatedLadleId, question.Lot is null || used.Item2 is not null)),
            .. weighings.Where(w => IsOf(w.Lot, question.Lot)).Select(w => RecallStart.Heat(w.HeatId, w.From, question.Lot is null || w.Lot is not null)),
        ];
    }
#pragma warning restore CA1304, CA1311, CA1862

    private static IEnumerable<string?> Lots(PocketCard card, long materialId)
    {
        if (card.AlloyMaterialId == materialId) yield return card.AlloyLot;
        if (card.CoverMaterialId == materialId) yield return card.CoverLot;
        if (card.InoculantMaterialId == materialId) yield return card.InoculantLot;
        if (card.PearliteMaterialId == materialId) yield return card.PearliteLot;
    }

    // Where no lot was recorded it may have been any.
    private static bool IsOf(string? used, string? asked) => asked is null || used is null || string.Equals(used.Trim(), asked.Trim(), StringComparison.OrdinalIgnoreCase);

    private static IQueryable<TFact> Between<TFact>(this IQueryable<TFact> facts, RecallQuestion question)
        where TFact : Keeping.Fact
    {
        if (question.Since is { } since) facts = facts.Where(f => f.ObservedAt >= since);
        if (question.Before is { } before) facts = facts.Where(f => f.ObservedAt < before);
        return facts;
    }
}

using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>Corrects lines of the yard's ledger; a later count takes up the difference, for it showed what lay there.</summary>
internal static class StockCorrection
{
    /// <summary>The line that was written with a fact, by the command that both share.</summary>
    public static Task<StockFact> StockLineOf(
        this RecordsContext db, Guid entryKey, long materialId, StockKind kind, CancellationToken cancellation) =>
        db.StockFacts.AsNoTracking().SingleAsync(s => s.EntryKey == entryKey && s.MaterialId == materialId && s.Kind == kind, cancellation);

    /// <summary>Puts a line of the same lot in the place of another one, and brings the stock with it.</summary>
    public static Task Replace(
        this Writing writing, StockFact line, long materialId, StockKind kind, double kg, long? heatId, DateTimeOffset observedAt, string reason,
        CancellationToken cancellation) =>
        writing.Replace(line, materialId, kind, kg, heatId, observedAt, reason, materialId == line.MaterialId ? line.Lot : null, cancellation);

    /// <summary>Puts a line in the place of another one, and brings the stock with it.</summary>
    public static async Task Replace(
        this Writing writing, StockFact line, long materialId, StockKind kind, double kg, long? heatId, DateTimeOffset observedAt, string reason,
        string? lot, CancellationToken cancellation)
    {
        foreach (var id in new[] { line.MaterialId, materialId }.Distinct().Order()) await writing.Db.LockMaterial(id, cancellation);
        var now = new StockFact
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = observedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = line.Id,
            Reason = reason,
            MaterialId = materialId,
            Kind = kind,
            Kg = kg,
            HeatId = heatId,
            Lot = lot,
        };
        writing.Db.Add(now);
        await writing.Db.SaveChangesAsync(cancellation);
        if (await writing.SeenAlike(line, now, cancellation)) await writing.Change(materialId, lot, observedAt, kg - line.Kg, reason, cancellation, now.Id);
        else
        {
            await writing.Change(line.MaterialId, line.Lot, line.ObservedAt, -line.Kg, reason, cancellation, now.Id);
            await writing.Change(materialId, lot, observedAt, kg, reason, cancellation, now.Id);
        }
    }

    /// <summary>The same counts saw both lines.</summary>
    private static async Task<bool> SeenAlike(this Writing writing, StockFact line, StockFact now, CancellationToken cancellation)
    {
        if ((line.MaterialId, line.Lot) != (now.MaterialId, now.Lot)) return false;
        var (left, came) = (await First(line), await First(now));
        return left == came;

        Task<long> First(StockFact of) =>
            writing.Db.CountsAfter(of.MaterialId, of.Lot, of.ObservedAt, now.Id).Select(s => s.Id).FirstOrDefaultAsync(cancellation);
    }
}

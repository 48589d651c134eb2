using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Reading;
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
        await writing.Add(line, materialId, kind, kg, heatId, observedAt, reason, lot, cancellation);
        var left = await writing.CountAfter(line.MaterialId, line.ObservedAt, cancellation);
        var came = await writing.CountAfter(materialId, observedAt, cancellation);
        if (line.MaterialId == materialId && left?.Id == came?.Id) await writing.Shift(materialId, came, kg - line.Kg, reason, cancellation);
        else
        {
            await writing.Shift(line.MaterialId, left, -line.Kg, reason, cancellation);
            await writing.Shift(materialId, came, kg, reason, cancellation);
        }
    }

    private static Task<StockFact?> CountAfter(this Writing writing, long materialId, DateTimeOffset at, CancellationToken cancellation) =>
        writing.Db.InForce<StockFact>().AsNoTracking()
            .Where(s => s.MaterialId == materialId && s.Kind == StockKind.Counted && s.Lot == null && s.ObservedAt > at)
            .OrderBy(s => s.ObservedAt).ThenBy(s => s.Id)
            .FirstOrDefaultAsync(cancellation);

    private static async Task Shift(
        this Writing writing, long materialId, StockFact? count, double changeKg, string reason, CancellationToken cancellation)
    {
        if (count is null) await writing.Move(materialId, changeKg, cancellation);
        else if (changeKg != 0)
        {
            await writing.Add(count, materialId, count.Kind, count.Kg - changeKg, count.HeatId, count.ObservedAt, reason, count.Lot, cancellation);
        }
    }

    private static async Task Add(
        this Writing writing, StockFact line, long materialId, StockKind kind, double kg, long? heatId, DateTimeOffset observedAt, string reason,
        string? lot, CancellationToken cancellation)
    {
        writing.Db.Add(new StockFact
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
        });
        await writing.Db.SaveChangesAsync(cancellation);
    }
}

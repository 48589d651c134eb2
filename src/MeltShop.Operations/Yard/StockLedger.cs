using MeltShop.Records;
using MeltShop.Records.Reading;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Yard;

/// <summary>The yard's ledger: a line, and the material's stock with it.</summary>
internal static class StockLedger
{
    /// <summary>
    /// Books a change of the stock, kg, negative when something leaves. The ledger may go below zero: the scale is right, and a
    /// negative stock shows that a delivery or a count is missing.
    /// </summary>
    public static async Task Book(
        this Writing writing, long materialId, StockKind kind, double kg, long? heatId, string? lot, CancellationToken cancellation)
    {
        await writing.Db.LockMaterial(materialId, cancellation);
        writing.Db.Add(new StockFact
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            MaterialId = materialId,
            Kind = kind,
            Kg = kg,
            HeatId = heatId,
            Lot = lot,
        });
        await writing.Db.SaveChangesAsync(cancellation);
        await writing.Change(materialId, lot, writing.Stamp.ObservedAt, kg, reason: null, cancellation);
    }

    /// <summary>
    /// Brings the stock along with what changed at a time, kg. A count that came later showed what lay there whatever stood before it, so
    /// it takes up the difference: one of a lot what changed of the lot, one of all that lies there what changed at all.
    /// </summary>
    public static async Task Change(
        this Writing writing, long materialId, string? lot, DateTimeOffset at, double kg, string? reason, CancellationToken cancellation, long? except = null)
    {
        var counts = await writing.Db.CountsAfter(materialId, lot, at, except).ToListAsync(cancellation);
        var (all, ofLot) = (kg, kg);
        foreach (var count in counts)
        {
            var takenUp = count.Lot is null ? all : ofLot;
            if (takenUp == 0) continue;
            writing.Db.Add(new StockFact
            {
                EntryKey = writing.Stamp.EntryKey,
                PersonId = writing.Stamp.PersonId,
                ObservedAt = count.ObservedAt,
                EnteredAt = writing.Stamp.EnteredAt,
                SupersedesId = count.Id,
                Reason = reason,
                MaterialId = materialId,
                Kind = count.Kind,
                Kg = count.Kg - takenUp,
                HeatId = count.HeatId,
                Lot = count.Lot,
            });
            all -= takenUp;
            if (count.Lot is not null) ofLot = 0;
        }

        await writing.Db.SaveChangesAsync(cancellation);

        // Added in the database and not to a tracked row: a page on which somebody edits the price must not go stale because the stock
        // moved. A stock never counted stays unknown.
        await writing.Db.Materials
            .Where(m => m.Id == materialId)
            .ExecuteUpdateAsync(set => set.SetProperty(m => m.StockKg, m => m.StockKg + all), cancellation);
    }

    /// <summary>The counts that saw a line of a lot, or of none, in the order in which they happened.</summary>
    public static IQueryable<StockFact> CountsAfter(this RecordsContext db, long materialId, string? lot, DateTimeOffset at, long? except) =>
        db.InForce<StockFact>().AsNoTracking()
            .Where(s => s.MaterialId == materialId && s.Kind == StockKind.Counted && (s.Lot == null || s.Lot == lot) && s.ObservedAt > at && s.Id != except)
            .OrderBy(s => s.ObservedAt).ThenBy(s => s.Id);

    /// <summary>Makes a stock known that never was: from now on it is the sum of the ledger.</summary>
    public static Task SetStock(this Writing writing, long materialId, double kg, CancellationToken cancellation) =>
        writing.Db.Materials
            .Where(m => m.Id == materialId)
            .ExecuteUpdateAsync(set => set.SetProperty(m => m.StockKg, (double?)kg), cancellation);

    /// <summary>Sum of the lines of a material, or of one lot of it, that no later one corrects, kg.</summary>
    public static Task<double> Sum(this RecordsContext db, long materialId, string? lot, DateTimeOffset until, CancellationToken cancellation) =>
        db.InForce<StockFact>().Where(s => s.MaterialId == materialId && (lot == null || s.Lot == lot) && s.ObservedAt <= until).SumAsync(s => s.Kg, cancellation);
}

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

        await writing.Move(materialId, kg, cancellation);
    }

    /// <summary>Moves the stock with its ledger.</summary>
    public static async Task Move(this Writing writing, long materialId, double kg, CancellationToken cancellation)
    {
        // Added in the database and not to a tracked row: two scales may book the same material at once, and a page on which
        // somebody edits the price must not go stale because the stock moved. A stock never counted stays unknown.
        await writing.Db.Materials
            .Where(m => m.Id == materialId)
            .ExecuteUpdateAsync(set => set.SetProperty(m => m.StockKg, m => m.StockKg + kg), cancellation);
    }

    /// <summary>Makes a stock known that never was: from now on it is the sum of the ledger.</summary>
    public static Task SetStock(this Writing writing, long materialId, double kg, CancellationToken cancellation) =>
        writing.Db.Materials
            .Where(m => m.Id == materialId)
            .ExecuteUpdateAsync(set => set.SetProperty(m => m.StockKg, (double?)kg), cancellation);

    /// <summary>Sum of the lines of a material, or of one lot of it, that no later one corrects, kg.</summary>
    public static Task<double> Sum(Writing writing, long materialId, string? lot, CancellationToken cancellation) =>
        writing.Db.InForce<StockFact>().Where(s => s.MaterialId == materialId && (lot == null || s.Lot == lot)).SumAsync(s => s.Kg, cancellation);
}

using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Writing;

/// <summary>
/// Computes the chain anew from the stored fields, and compares every row of the records with what the trail says was written last.
/// </summary>
/// <remarks>Tampering is evident, not impossible: who rewrites all of it is found by a head that was printed or kept elsewhere.</remarks>
public sealed class TrailCheck(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Reads the whole trail and all records as they stand at one moment; people go on working.</summary>
    public async Task<TrailReport> Run(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        await using var transaction = await db.BeginReading(ct);
        var faults = new List<TrailFault>();
        var written = new WrittenRows();
        var (number, hash) = (0L, TrailHash.BeforeTheFirst);
        await foreach (var row in db.TrailRows.AsNoTracking().OrderBy(r => r.Number).AsAsyncEnumerable().WithCancellation(ct))
        {
            if (row.Number != number + 1) faults.Add(new("trail.gap", Number: row.Number));
            if (row.PreviousHash != hash) faults.Add(new("trail.previous", Number: row.Number));
            if (row.Hash != TrailHash.Of(row)) faults.Add(new("trail.hash", Number: row.Number));
            if (!written.Add(row.Payload)) faults.Add(new("trail.unreadable", Number: row.Number));
            (number, hash) = (row.Number, row.Hash);
        }

        var head = await db.TrailHeads.AsNoTracking().SingleOrDefaultAsync(ct);
        if (head is null || head.Number != number || head.Hash != hash) faults.Add(new("trail.head", Number: head?.Number));
        faults.AddRange(await written.Compare(db, ct));
        return new(number, hash, written.Count, faults);
    }
}

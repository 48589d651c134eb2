using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Writing;

/// <summary>
/// Computes the chain anew from the stored fields, and compares every row of the records with what the trail says was written last.
/// </summary>
/// <remarks>Tampering is evident, not impossible: who rewrites all of it is found by a head that was printed or kept elsewhere.</remarks>
public sealed class TrailCheck(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Reads the whole trail and all records as they stand at one moment; people go on working.</summary>
    /// <param name="marks">Ends that the trail had, as they were printed or kept elsewhere: it must pass through each.</param>
    /// <param name="ct">Stops the reading.</param>
    public async Task<TrailReport> Run(IReadOnlyCollection<TrailMark> marks, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(marks);
        await using var db = await contexts.CreateDbContextAsync(ct);
        await using var transaction = await db.BeginReading(ct);
        return await Run(db, marks, ct);
    }

    /// <summary>The same without a mark.</summary>
    public Task<TrailReport> Run(CancellationToken ct = default) => Run([], ct);

    /// <summary>What the context's transaction sees.</summary>
    internal static async Task<TrailReport> Run(RecordsContext db, IReadOnlyCollection<TrailMark> marks, CancellationToken ct)
    {
        var faults = new List<TrailFault>();
        var written = new WrittenRows();
        var missed = marks.Where(m => !m.IsAt(0, TrailHash.BeforeTheFirst)).ToList();
        var (number, hash) = (0L, TrailHash.BeforeTheFirst);
        await foreach (var row in StoredTrail.Read(db, ct))
        {
            if (row is null)
            {
                faults.Add(new("trail.unreadable", Number: number + 1));
                continue;
            }

            if (row.Number != number + 1) faults.Add(new("trail.gap", Number: row.Number));
            if (row.PreviousHash != hash) faults.Add(new("trail.previous", Number: row.Number));
            if (row.Hash != TrailHash.Of(row)) faults.Add(new("trail.hash", Number: row.Number));
            if (!written.Add(row)) faults.Add(new("trail.unreadable", Number: row.Number));
            (number, hash) = (row.Number, row.Hash);
            missed.RemoveAll(m => m.IsAt(number, hash));
        }

        faults.AddRange(missed.Select(m => new TrailFault("trail.mark", Number: m.Number, Key: m.Hash)));
        var head = await db.TrailHeads.AsNoTracking().SingleOrDefaultAsync(ct);
        if (head is null || head.Number != number || head.Hash != hash) faults.Add(new("trail.head", Number: head?.Number));
        faults.AddRange(await written.Compare(db, ct));
        faults.AddRange(await CounterCheck.Run(db, ct));
        return new(number, hash, written.Count, faults);
    }
}

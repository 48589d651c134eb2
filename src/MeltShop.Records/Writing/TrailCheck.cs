using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Writing;

/// <summary>What a check of the trail found.</summary>
/// <param name="Rows">Rows read.</param>
/// <param name="HeadHash">The hash at the end, to compare with one that was printed or kept elsewhere.</param>
/// <param name="Faults">What is wrong; empty where the trail holds.</param>
public sealed record TrailReport(long Rows, string HeadHash, IReadOnlyList<TrailFault> Faults)
{
    public bool Holds => Faults.Count == 0;
}

/// <param name="Number">The row.</param>
/// <param name="Code"><c>trail.gap</c>, <c>trail.hash</c>, <c>trail.previous</c>, <c>trail.head</c> or <c>trail.unreadable</c>.</param>
public sealed record TrailFault(long Number, string Code);

/// <summary>Computes the chain anew from the stored fields.</summary>
public sealed class TrailCheck(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Reads the whole trail in its order, a row at a time.</summary>
    public async Task<TrailReport> Run(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var faults = new List<TrailFault>();
        var (number, hash) = (0L, TrailHash.BeforeTheFirst);
        await foreach (var row in db.TrailRows.AsNoTracking().OrderBy(r => r.Number).AsAsyncEnumerable().WithCancellation(ct))
        {
            if (row.Number != number + 1) faults.Add(new(row.Number, "trail.gap"));
            if (row.PreviousHash != hash) faults.Add(new(row.Number, "trail.previous"));
            if (row.Hash != TrailHash.Of(row)) faults.Add(new(row.Number, "trail.hash"));
            (number, hash) = (row.Number, row.Hash);
        }

        var head = await db.TrailHeads.AsNoTracking().SingleOrDefaultAsync(ct);
        if (head is null || head.Number != number || head.Hash != hash) faults.Add(new(head?.Number ?? 0, "trail.head"));
        return new(number, hash, faults);
    }
}

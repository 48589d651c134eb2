using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Yard;

/// <summary>Reads in which bins the lots of materials lie: one query, however many there are.</summary>
internal static class BinRows
{
    /// <summary>The latest place of each lot; without a lot that of what lies outside of every one.</summary>
    public static async Task<ILookup<long, LotPlace>> Places(this RecordsContext db, IReadOnlyCollection<long> materialIds, CancellationToken ct) =>
        (await db.InForce<LotPlace>().AsNoTracking().Where(p => materialIds.Contains(p.MaterialId))
            .GroupBy(p => new { p.MaterialId, p.Lot })
            .Select(g => g.OrderByDescending(p => p.ObservedAt).ThenByDescending(p => p.Id).First()).ToListAsync(ct)).ToLookup(p => p.MaterialId);
}

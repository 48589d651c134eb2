using MeltShop.Operations.Heats;
using MeltShop.Records;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Laboratory;

internal static class SampleLock
{
    /// <summary>
    /// Keeps the furnace that a sample belongs to to this transaction, and so the sample, before anything of it is read: two who set burns
    /// aside would else each take the mean over the other's burn.
    /// </summary>
    /// <param name="others">Heats that it may be moved to.</param>
    public static async Task LockSample(this RecordsContext db, long sampleId, CancellationToken cancellation, params IEnumerable<long> others)
    {
        var heats = await db.Samples.Where(s => s.Id == sampleId).Select(s => s.HeatId).ToListAsync(cancellation);
        await db.LockHeats(cancellation, [.. heats, .. others]);
    }
}

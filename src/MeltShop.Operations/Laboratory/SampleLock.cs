using MeltShop.Records;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Laboratory;

internal static class SampleLock
{
    /// <summary>
    /// Keeps the furnace that a sample belongs to to this transaction, and so the sample, before anything of it is read: two who set burns
    /// aside would else each take the mean over the other's burn.
    /// </summary>
    public static async Task LockSample(this RecordsContext db, long sampleId, CancellationToken cancellation)
    {
        var furnaces = await db.Samples.Where(s => s.Id == sampleId)
            .Join(db.Heats, s => s.HeatId, h => h.Id, (_, h) => h.FurnaceId).ToListAsync(cancellation);
        foreach (var id in furnaces) await db.LockFurnace(id, cancellation);
    }
}

using MeltShop.Records;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>The grade that a ladle's castings are judged by: the heat's, or the one that they were downgraded to.</summary>
internal static class CastGrade
{
    public static async Task<long> Id(RecordsContext db, long treatedLadleId, CancellationToken cancellation)
    {
        var last = await LastDecision.Of(db, treatedLadleId, cancellation);
        return last?.GradeId ?? await db.TreatedLadles.Where(l => l.Id == treatedLadleId)
            .Join(db.Heats, l => l.HeatId, h => h.Id, (l, h) => h.GradeId).SingleAsync(cancellation);
    }
}

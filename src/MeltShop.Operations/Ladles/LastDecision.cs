using MeltShop.Records;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>The last word about the castings of a ladle; what was decided about a test unit apart is not it.</summary>
internal static class LastDecision
{
    /// <summary>Null where nobody has decided.</summary>
    public static Task<CastingDecision?> Of(RecordsContext db, long treatedLadleId, CancellationToken cancellation) =>
        db.InForce<CastingDecision>().AsNoTracking().Where(d => d.TreatedLadleId == treatedLadleId && d.TestUnit == null)
            .OrderByDescending(d => d.Id).FirstOrDefaultAsync(cancellation);

    /// <summary>What is scrap stays scrap.</summary>
    public static async Task<bool> IsScrap(RecordsContext db, long treatedLadleId, CancellationToken cancellation) =>
        (await Of(db, treatedLadleId, cancellation))?.Verdict == CastingVerdict.Scrap;
}

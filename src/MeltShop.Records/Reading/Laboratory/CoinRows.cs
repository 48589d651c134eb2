using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>A coin that is on its way.</summary>
public sealed record CoinView(Origin Origin, long HeatId, long? TreatedLadleId, SampleKind Kind, string CoinNumber, string? Remarks)
{
    public long Id => Origin.FactId;
}

/// <summary>Coins whose result has not come and that are not lost.</summary>
public static class CoinRows
{
    /// <summary>Those that a result may still come of.</summary>
    public static IQueryable<CoinOnItsWay> Waiting(RecordsContext db)
    {
        ArgumentNullException.ThrowIfNull(db);
        return db.InForce<CoinOnItsWay>().Where(c => !c.IsLost && !db.Samples.Any(s => s.CoinOnItsWayId == c.Id));
    }

    /// <summary>The first taken first.</summary>
    internal static async Task<IReadOnlyList<CoinView>> Load(RecordsContext db, IQueryable<CoinOnItsWay> which, CancellationToken ct) =>
    [
        .. (await db.Rows(which, ct))
            .Select(r => new CoinView(r.Origin, r.Fact.HeatId, r.Fact.TreatedLadleId, r.Fact.Kind, r.Fact.CoinNumber, r.Fact.Remarks)),
    ];
}

using MeltShop.Metallurgy;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Laboratory;

/// <summary>What a sample says of where it comes from: its instrument, and the coin that was sent ahead.</summary>
internal static class SampleOrigin
{
    public static async Task<Finding?> Check(RecordsContext db, long heatId, long? instrumentId, long? coinId, CancellationToken cancellation)
    {
        if (instrumentId is { } instrument && !await db.Instruments.AnyAsync(i => i.Id == instrument && i.IsActive, cancellation))
            return new("instrumentId", "instrument.unknown");
        if (coinId is not { } id) return null;
        return await Waiting(db, id, cancellation) is { } coin ? coin.HeatId == heatId ? null : new("coinOnItsWayId", "coin.otherHeat") : new("coinOnItsWayId", "coin.notWaiting");
    }

    /// <summary>The coin, where it is neither lost nor answered.</summary>
    public static Task<CoinOnItsWay?> Waiting(RecordsContext db, long coinId, CancellationToken cancellation) =>
        CoinRows.Waiting(db).SingleOrDefaultAsync(c => c.Id == coinId, cancellation);
}

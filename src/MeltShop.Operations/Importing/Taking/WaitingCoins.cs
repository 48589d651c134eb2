using MeltShop.Operations.Heats;
using MeltShop.Operations.Importing.Subjects;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Importing.Taking;

/// <summary>The coins that were sent ahead and whose results a file brings: same heat, ladle, kind and coin number.</summary>
internal static class WaitingCoins
{
    public static async Task<IReadOnlyDictionary<FoundSample, CoinOnItsWay>> Of(RecordsContext db, IReadOnlyList<FoundSample> samples, CancellationToken ct)
    {
        var heats = samples.Select(s => s.HeatId).Distinct().ToList();
        var waiting = CoinRows.Waiting(db).Where(c => EF.Parameter(heats).Contains(c.HeatId));
        await db.LockHeats(ct, await waiting.Select(c => c.HeatId).Distinct().ToListAsync(ct)); // nobody types one of them in meanwhile
        var coins = (await waiting.ToListAsync(ct))
            .ToLookup(c => (c.HeatId, c.TreatedLadleId, c.Kind, (string?)c.CoinNumber));
        return samples
            .GroupBy(s => (s.HeatId, s.TreatedLadleId, s.Sample.Subject.Kind, s.Sample.Subject.Coin))
            .Where(g => coins[g.Key].Any())
            .ToDictionary(g => g.First(), g => coins[g.Key].MinBy(c => c.Id)!); // a coin has one result
    }
}

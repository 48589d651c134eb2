using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>Where the iron of a ladle may go: what holds iron is topped up, what is empty is filled.</summary>
internal static class OtherVessels
{
    public static async Task<(IReadOnlyList<OtherLadle> Others, IReadOnlyList<LadleEquipment> Vessels)> Load(
        RecordsContext db, TreatedLadleView own, IReadOnlyList<LadleEquipment> all, CancellationToken ct)
    {
        var open = await (
            from other in db.TreatedLadles
            join ladle in db.Ladles on other.LadleId equals ladle.Id
            join heat in db.Heats on other.HeatId equals heat.Id
            where other.State == TreatedLadleState.Prepared || other.State == TreatedLadleState.Tapped || other.State == TreatedLadleState.Pouring
            orderby other.Id
            select new { other.State, other.LadleId, Other = new OtherLadle(other.Id, other.Ordinal, heat.Number, ladle.Name, ladle.FillLimitKg) })
            .ToListAsync(ct);
        var content = await LadleContents.Load(db, [.. open.Select(o => o.Other.Id)], ct);
        var taken = open.Where(o => o.State != TreatedLadleState.Pouring || content[o.Other.Id].AtLeastKg > 0).Select(o => o.LadleId).Append(own.LadleId).ToHashSet();
        return (
            [.. open.Where(o => o.State != TreatedLadleState.Prepared && o.Other.Id != own.Id).Select(o => o.Other with { LeftKg = content[o.Other.Id].LeftKg })],
            [.. all.Where(l => !taken.Contains(l.Id))]);
    }
}

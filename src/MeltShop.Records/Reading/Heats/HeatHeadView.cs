using MeltShop.Records.Heats;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Heats;

/// <summary>What stands above everything about a heat.</summary>
/// <param name="HighestC">The furnace's highest bath temperature, °C; null when nobody has entered one.</param>
/// <param name="LiquidKg">Sum of the furnace's metal ledger now, whichever heat it belongs to.</param>
/// <param name="TimeZone">IANA zone of the site.</param>
public sealed record HeatHeadView(
    long Id, Guid Version, string Number, HeatState State, DateTimeOffset StartedAt, DateTimeOffset? ClosedAt, double HeelKg, long PlanId,
    long FurnaceId, string FurnaceCode, string FurnaceName, double CapacityKg, double? HighestC, double LiquidKg, long GradeId, string TimeZone, string Currency)
{
    internal static Task<HeatHeadView?> Load(RecordsContext db, long heatId, CancellationToken ct) => (
        from heat in db.Heats
        join furnace in db.Furnaces on heat.FurnaceId equals furnace.Id
        join site in db.Sites on heat.SiteId equals site.Id
        where heat.Id == heatId
        select new HeatHeadView(
            heat.Id, heat.Version, heat.Number, heat.State, heat.StartedAt, heat.ClosedAt, heat.HeelKg, heat.PlanId,
            furnace.Id, furnace.Code, furnace.Name, furnace.CapacityKg, furnace.HighestC,
            furnace.LiquidKg,
            heat.GradeId, site.TimeZone, site.Currency)).SingleOrDefaultAsync(ct);
}

using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Heats;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Charge;

/// <summary>Reads the furnaces in use with their heel, their ledger's sum and the heat in them: four queries, however many there are.</summary>
internal static class FurnaceRows
{
    public static readonly IReadOnlyList<HeatState> InTheFurnace = [HeatState.Charging, HeatState.Bath, HeatState.Tapping];

    public static async Task<IReadOnlyList<ChargeFurnaceView>> Load(RecordsContext db, CancellationToken ct)
    {
        var furnaces = (await db.Furnaces.AsNoTracking().Where(f => f.IsActive).ToListAsync(ct)).InNaturalOrder(f => f.Code);
        var heels = await Heels(db, ct);
        var heats = await db.Heats.Where(h => InTheFurnace.Contains(h.State)).Select(h => new { h.FurnaceId, h.Id, h.Number })
            .ToDictionaryAsync(h => h.FurnaceId, ct);
        return
        [
            .. furnaces.Select(f => new ChargeFurnaceView(
                f.Id, f.Code, f.Name, f.CapacityKg, f.PowerKw, heels.GetValueOrDefault(f.Id), f.LiquidKg,
                heats.GetValueOrDefault(f.Id)?.Id, heats.GetValueOrDefault(f.Id)?.Number) { ColdChargeM3 = f.ColdChargeM3 }),
        ];
    }

    /// <summary>The last heel in force of each furnace.</summary>
    private static async Task<Dictionary<long, HeelView>> Heels(RecordsContext db, CancellationToken ct)
    {
        var last = db.Furnaces.Where(f => f.IsActive).Select(f => db.InForce<Heel>().Where(h => h.FurnaceId == f.Id)
            .OrderByDescending(h => h.ObservedAt).ThenByDescending(h => h.Id).Select(h => h.Id).FirstOrDefault());
        var heels = await db.Heels.AsNoTracking().AsSingleQuery().Include(h => h.Percents).Where(h => last.Contains(h.Id)).ToListAsync(ct);
        var heatIds = heels.Select(h => h.FromHeatId).OfType<long>().ToList();
        var numbers = await db.Heats.Where(h => heatIds.Contains(h.Id)).ToDictionaryAsync(h => h.Id, h => h.Number, ct);
        return heels.ToDictionary(h => h.FurnaceId, h => new HeelView(
            h.Id, h.Kg, Analysis.Of(h.Percents.Select(p => KeyValuePair.Create(p.Element, p.Percent))), h.ObservedAt, h.FromHeatId,
            h.FromHeatId is { } from ? numbers[from] : null, h.SampleId));
    }
}

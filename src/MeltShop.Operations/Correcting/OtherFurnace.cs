using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Heats;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>Takes a heat to the furnace that it was in, and its end to when it was: the ledgers of both furnaces and the heels that the heat left follow.</summary>
internal static class OtherFurnace
{
    /// <summary>Moves each line of the heat; a dip still shows what it showed. What was in the other furnace when the heat started is its heel.</summary>
    public static async Task MoveToFurnace(this Writing writing, Heat heat, long furnaceId, DateTimeOffset startedAt, string reason, CancellationToken cancellation)
    {
        var db = writing.Db;
        var formerId = heat.FurnaceId;
        heat.FurnaceId = furnaceId;
        heat.HeelKg = await db.InFurnace(furnaceId, startedAt, cancellation);
        await db.SaveChangesAsync(cancellation);
        // One at a time: a dip that stands later in the former furnace takes up each line that leaves, and is another row then.
        while (await db.InForce<FurnaceMetal>().AsNoTracking().Include(m => m.Percents).Where(m => m.HeatId == heat.Id && m.FurnaceId == formerId)
            .OrderBy(m => m.ObservedAt).ThenBy(m => m.Id).FirstOrDefaultAsync(cancellation) is { } line)
        {
            var kg = line.LevelKg is { } level ? level - await db.InFurnace(furnaceId, line.ObservedAt, cancellation) : line.Kg;
            await writing.Replace(line, heat, kg, line.ObservedAt, reason, cancellation, line.LevelKg, line.PlusMinusKg);
        }
    }

    /// <summary>What a heat left stands in the furnace that it was in, as that furnace's ledger shows it, and the next heats of both furnaces started over it; does nothing where the heat goes on.</summary>
    public static async Task LeaveInFurnace(this Writing writing, Heat heat, HeatSaid former, string reason, CancellationToken cancellation)
    {
        if (heat.ClosedAt is not { } closedAt) return;
        var inFurnaceKg = await writing.Db.InFurnace(heat.FurnaceId, closedAt, cancellation);
        var kg = inFurnaceKg < FurnaceLedger.Dust ? 0 : inFurnaceKg;
        var bath = kg > 0 ? await BathNow.Load(writing.Db, heat, closedAt, cancellation) : null;
        foreach (var heel in await writing.Left(heat, closedAt, cancellation))
            await writing.Replace(heel, kg, closedAt, reason, bath?.SampleId, bath?.Metal.Analysis ?? Analysis.Empty, cancellation, heat.FurnaceId);
        await writing.FollowStart(former.FurnaceId, former.StartedAt, reason, cancellation);
        await writing.FollowStart(heat.FurnaceId, closedAt, reason, cancellation);
    }

    /// <summary>The lines that the end of a heat wrote: what was pigged out or emptied with it, as they stand now.</summary>
    public static async Task<List<FurnaceMetal>> OfTheEnd(this RecordsContext db, Heat heat, CancellationToken cancellation)
    {
        var keys = await db.HeatSteps.Where(s => s.HeatId == heat.Id && s.State == heat.State).Select(s => s.EntryKey).ToListAsync(cancellation);
        var lines = new List<FurnaceMetal>();
        foreach (var line in await db.InForce<FurnaceMetal>().AsNoTracking().Include(m => m.Percents)
            .Where(m => m.HeatId == heat.Id && m.ObservedAt == heat.ClosedAt).OrderBy(m => m.Id).ToListAsync(cancellation))
        {
            var first = await db.FirstOf(line, cancellation);
            if (await db.FurnaceMetals.AnyAsync(m => m.Id == first && keys.Contains(m.EntryKey), cancellation)) lines.Add(line);
        }

        return lines;
    }

    /// <summary>Moves the end: the step, what was pigged out or emptied with it, and the heel that it left.</summary>
    public static async Task MoveEnd(this Writing writing, Heat heat, DateTimeOffset closedAt, string reason, CancellationToken cancellation)
    {
        var db = writing.Db;
        var step = await db.InForce<HeatStep>().AsNoTracking().Where(s => s.HeatId == heat.Id && s.State == heat.State).OrderBy(s => s.Id).LastAsync(cancellation);
        var lines = await db.OfTheEnd(heat, cancellation);
        db.Add(new HeatStep
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = closedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = step.Id,
            Reason = reason,
            HeatId = heat.Id,
            State = step.State,
        });
        var former = heat.ClosedAt!.Value;
        heat.ClosedAt = closedAt;
        // The dip first: what was pigged out before it is then taken up by it, whichever way it moves.
        foreach (var line in lines.OrderByDescending(l => l.Kind == FurnaceMetalKind.Dipped))
        {
            var kg = line.LevelKg is { } level ? level - await CorrectMetal.Before(db, line, closedAt, cancellation) : line.Kg;
            await writing.Replace(line, null, kg, closedAt, reason, cancellation, line.LevelKg, line.PlusMinusKg);
        }

        foreach (var heel in await writing.Left(heat, former, cancellation)) await writing.Replace(heel, heel.Kg, closedAt, reason, cancellation);
    }

    // At its end, and not what a dip showed of it later: that stays when and where it was dipped.
    private static Task<List<Heel>> Left(this Writing writing, Heat heat, DateTimeOffset closedAt, CancellationToken cancellation) =>
        writing.Db.InForce<Heel>().AsNoTracking().Include(h => h.Percents).Where(h => h.FromHeatId == heat.Id && h.ObservedAt == closedAt).OrderBy(h => h.Id).ToListAsync(cancellation);
}

using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Heats;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>
/// Adds and corrects lines of the liquid-metal ledger. A dip that came later showed what was in the furnace whatever stood before it, so
/// the dip takes up the difference and what the ledger says after it stays.
/// </summary>
internal static class FurnaceCorrection
{
    /// <summary>The line in force that was written with a fact, by the command that both share; where its heat was put into another furnace since, the line there.</summary>
    public static async Task<FurnaceMetal> LineOf(this RecordsContext db, Guid entryKey, FurnaceMetalKind kind, CancellationToken cancellation)
    {
        var lines = db.FurnaceMetals.AsNoTracking().Include(m => m.Percents);
        var line = await lines.SingleAsync(m => m.EntryKey == entryKey && m.Kind == kind, cancellation);
        while (await lines.SingleOrDefaultAsync(m => m.SupersedesId == line.Id, cancellation) is { } later) line = later;
        return line;
    }

    /// <summary>Keeps the ledgers of furnaces to this transaction, always in the same order, so that two corrections cannot wait for each other.</summary>
    public static async Task LockFurnaces(this RecordsContext db, CancellationToken cancellation, params IEnumerable<long> furnaceIds)
    {
        foreach (var id in furnaceIds.Distinct().Order()) await db.LockFurnace(id, cancellation);
    }

    /// <summary>Puts a line in the place of another one.</summary>
    /// <param name="heat">The heat that it belongs to now, and its furnace; null leaves both.</param>
    /// <param name="levelKg">For a dip: the liquid that it showed, kg.</param>
    /// <param name="plusMinusKg">For a dip: how far it may be off, kg.</param>
    public static async Task Replace(
        this Writing writing, FurnaceMetal line, Heat? heat, double kg, DateTimeOffset observedAt, string reason, CancellationToken cancellation,
        double? levelKg = null, double? plusMinusKg = null)
    {
        var now = new FurnaceMetal
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = observedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = line.Id,
            Reason = reason,
            FurnaceId = heat?.FurnaceId ?? line.FurnaceId,
            HeatId = heat?.Id ?? line.HeatId,
            Kind = line.Kind,
            Kg = kg,
            LevelKg = levelKg,
            PlusMinusKg = plusMinusKg,
            TreatedLadleId = line.TreatedLadleId,
            Percents = [.. line.Percents.Select(p => new FurnaceMetalPercent { Element = p.Element, Percent = p.Percent })],
        };
        writing.Db.Add(now);
        await writing.Db.SaveChangesAsync(cancellation);
        await writing.Change(line.FurnaceId, -line.Kg, cancellation);
        await writing.Change(now.FurnaceId, now.Kg, cancellation);
        var (left, came) = (await writing.DipAfter(line, now.Id, cancellation), await writing.DipAfter(now, now.Id, cancellation));
        if (left?.Id == came?.Id) await writing.TakeUp(came, now.Kg - line.Kg, reason, cancellation);
        else
        {
            await writing.TakeUp(left, -line.Kg, reason, cancellation);
            await writing.TakeUp(came, now.Kg, reason, cancellation);
        }
    }

    /// <summary>Puts a heel right: the mass; its analysis stays.</summary>
    public static Task Replace(this Writing writing, Heel heel, double kg, DateTimeOffset observedAt, string reason, CancellationToken cancellation) =>
        writing.Replace(
            heel, kg, observedAt, reason, heel.SampleId, Analysis.Of(heel.Percents.Select(p => KeyValuePair.Create(p.Element, p.Percent))), cancellation);

    /// <summary>Puts a heel right.</summary>
    public static Task Replace(
        this Writing writing, Heel heel, double kg, DateTimeOffset observedAt, string? reason, long? sampleId, Analysis analysis, CancellationToken cancellation,
        long? furnaceId = null)
    {
        writing.Db.Add(new Heel
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = observedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = heel.Id,
            Reason = reason,
            FurnaceId = furnaceId ?? heel.FurnaceId,
            FromHeatId = heel.FromHeatId,
            SampleId = sampleId,
            Kg = kg,
            Percents = [.. analysis.Select(p => new HeelPercent { Element = p.Key, Percent = p.Value })],
        });
        return writing.Db.SaveChangesAsync(cancellation);
    }

    /// <summary>Adds a line to the ledger: what waited in a tablet arrives when later ones stand there already.</summary>
    public static async Task Insert(this Writing writing, FurnaceMetal line, CancellationToken cancellation)
    {
        writing.Db.Add(line);
        await writing.Db.SaveChangesAsync(cancellation);
        await writing.Change(line.FurnaceId, line.Kg, cancellation);
        await writing.TakeUp(await writing.DipAfter(line, line.Id, cancellation), line.Kg, reason: null, cancellation);
    }

    /// <summary>The dip that showed the furnace after this line. What happened in the same microsecond happened in the order in which it was entered.</summary>
    private static async Task<FurnaceMetal?> DipAfter(this Writing writing, FurnaceMetal line, long exceptId, CancellationToken cancellation)
    {
        var db = writing.Db;
        var dips = db.InForce<FurnaceMetal>().AsNoTracking().OrderBy(m => m.ObservedAt).ThenBy(m => m.Id)
            .Where(m => m.FurnaceId == line.FurnaceId && m.Kind == FurnaceMetalKind.Dipped && m.Id != exceptId);
        foreach (var dip in await dips.Where(m => m.ObservedAt == line.ObservedAt).ToListAsync(cancellation))
            if (await db.FirstOf(dip, cancellation) > await db.FirstOf(line, cancellation)) return dip;
        return await dips.FirstOrDefaultAsync(m => m.ObservedAt > line.ObservedAt, cancellation);
    }

    private static async Task TakeUp(this Writing writing, FurnaceMetal? dip, double changeKg, string? reason, CancellationToken cancellation)
    {
        if (dip is null || changeKg == 0) return;
        writing.Db.Add(new FurnaceMetal
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = dip.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = dip.Id,
            Reason = reason,
            FurnaceId = dip.FurnaceId,
            HeatId = dip.HeatId,
            Kind = dip.Kind,
            Kg = dip.Kg - changeKg,
            LevelKg = dip.LevelKg,
            PlusMinusKg = dip.PlusMinusKg,
        });
        await writing.Db.SaveChangesAsync(cancellation);
        await writing.Change(dip.FurnaceId, -changeKg, cancellation);
    }

    // Added in the database and not to a tracked row: who edits the furnace must not be told of a change because metal moved.
    private static Task<int> Change(this Writing writing, long furnaceId, double kg, CancellationToken cancellation) =>
        writing.Db.Furnaces.Where(f => f.Id == furnaceId).ExecuteUpdateAsync(set => set.SetProperty(f => f.LiquidKg, f => f.LiquidKg + kg), cancellation);
}

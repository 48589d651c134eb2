using MeltShop.Metallurgy.Chain;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Yard;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>
/// Puts a weighing right, or moves it to the heat that it belongs to. The wrong one stays beside it; both ledgers follow. Answers the
/// weighing that stands now.
/// </summary>
public sealed class CorrectWeighing(Recorder recorder, TimeProvider time) : Operation<CorrectWeighing.Command, long>(recorder, time)
{
    /// <param name="WeighingId">The one that is wrong.</param>
    /// <param name="HeatId">The heat that it belongs to.</param>
    /// <param name="Kg">What was weighed; 0 where nothing was.</param>
    /// <param name="HappenedAt">When it was weighed; null where that was right.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long WeighingId, long HeatId, long MaterialId, double Kg, bool IntoBath, string Reason,
        DateTimeOffset? HappenedAt = null) : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>The lot as it stands on the bag or the pile; null where that was right, empty where nobody can say which it was.</summary>
        public string? Lot { get; init; }
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.MassOrZero("kg", command.Kg);
        fields.OptionalText("lot", command.Lot, 60);
        fields.Correction(command, command.Reason, command.HappenedAt);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var wrong = await db.Weighings.AsNoTracking().SingleOrDefaultAsync(w => w.Id == command.WeighingId, cancellation);
        if (await db.Standing(wrong, "weighingId", cancellation) is { } finding) return Written<long>.Refused(finding);
        await db.LockHeats(cancellation, wrong!.HeatId, command.HeatId); // what is read of the heats from here on stands until this is written
        var heat = await db.Heats.AsNoTracking().SingleOrDefaultAsync(h => h.Id == command.HeatId, cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (heat.Id != wrong.HeatId && heat.State == HeatState.Cancelled) return Refuse("heatId", "state.wrong", heat.State.ToString());
        if (command.HappenedAt is { } happened && WeighingBounds.BeforeHeat(heat, happened, ClockTolerance, "happenedAt") is { } early) return Written<long>.Refused(early);
        if (command.Kg != wrong.Kg && await db.OverFurnace(heat, command.Kg, cancellation) is { } senseless) return Written<long>.Refused(senseless);
        var composition = await db.CompositionOf(command.MaterialId, command.IntoBath ? RecoveryStage.Bath : RecoveryStage.Charge, cancellation);
        if (composition is null) return Written<long>.Refused(await db.NoComposition("materialId", command.MaterialId, cancellation));
        var at = command.HappenedAt ?? wrong.ObservedAt;
        // A lot is one of its material: another material has another one, or none that anybody said.
        var lot = command.Lot is { } said ? (string.IsNullOrWhiteSpace(said) ? null : said.Trim()) : command.MaterialId == wrong.MaterialId ? wrong.Lot : null;
        if ((wrong.HeatId, wrong.MaterialId, wrong.Kg, wrong.IntoBath, wrong.ObservedAt, wrong.Lot) == (heat.Id, command.MaterialId, command.Kg, command.IntoBath, at, lot))
        {
            return Refuse("", "correction.nothing");
        }

        var line = await db.LineOf(wrong.EntryKey, FurnaceMetalKind.Charged, cancellation);
        var right = new Weighing
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = at,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = wrong.Id,
            Reason = command.Reason,
            HeatId = heat.Id,
            MaterialId = command.MaterialId,
            Kg = command.Kg,
            IntoBath = command.IntoBath,
            Lot = lot,
        };
        db.Add(right);
        await db.SaveChangesAsync(cancellation);
        // What melted in of a kilogram is what was reckoned when it was weighed, as long as the material and its way into the melt are the same.
        var perKg = command.MaterialId == wrong.MaterialId && command.IntoBath == wrong.IntoBath && wrong.Kg > 0 ? line.Kg / wrong.Kg : Arrival.PerKilogram(composition).LiquidKg;
        await writing.Replace(line, heat, command.Kg * perKg, at, command.Reason, cancellation);
        var stock = await db.StockLineOf(wrong.EntryKey, wrong.MaterialId, Kind(wrong.IntoBath), cancellation);
        await writing.Replace(stock, command.MaterialId, Kind(command.IntoBath), 0 - command.Kg, heat.Id, at, command.Reason, lot, cancellation);

        await writing.FollowHeels(await db.Heats.Where(h => h.Id == wrong.HeatId || h.Id == heat.Id).ToListAsync(cancellation), command.Reason, cancellation);
        long[] heats = [wrong.HeatId, heat.Id], materials = [wrong.MaterialId, command.MaterialId], furnaces = [line.FurnaceId, heat.FurnaceId];
        return Done(right.Id,
        [
            .. heats.Distinct().Select(id => new ChangeNotice(ChangeKind.Heat, id)),
            .. materials.Distinct().Select(id => new ChangeNotice(ChangeKind.Material, id)),
            .. furnaces.Distinct().Select(id => new ChangeNotice(ChangeKind.Furnace, id)),
        ]);
    }

    private static StockKind Kind(bool intoBath) => intoBath ? StockKind.Added : StockKind.Charged;
}

using MeltShop.Metallurgy.Chain;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>
/// Records a mass that went into the furnace: with the charge, or into the bath as a correction. The scale is right: more than the
/// yard's ledger holds is taken, and the ledger shows it by going below zero. Only what no load can be is refused (<see cref="WeighingBounds"/>).
/// Answers the weighing.
/// </summary>
public sealed class WeighIn(Recorder recorder, TimeProvider time) : Operation<WeighIn.Command, long>(recorder, time)
{
    /// <param name="IntoBath">Into the bath and not with the charge; null for what its time says, before or after the first bath sample, or where there is none the end of charging.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, long MaterialId, double Kg, bool? IntoBath)
        : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>As it stands on the bag or the pile; null where nobody says.</summary>
        public string? Lot { get; init; }
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Mass("kg", command.Kg);
        fields.OptionalText("lot", command.Lot, 60);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var heat = await writing.Db.LockedHeat(command.HeatId, cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (!heat.IsInFurnace()) return Refuse("heatId", "state.wrong", heat.State.ToString());
        var senseless = await writing.Db.OverFurnace(heat, command.Kg, cancellation) ?? WeighingBounds.BeforeHeat(heat, command.ObservedAt, ClockTolerance);
        if (senseless is not null) return Written<long>.Refused(senseless);
        var intoBath = command.IntoBath ?? await IsIntoBath(writing.Db, heat, command.ObservedAt, cancellation);
        var stage = intoBath ? RecoveryStage.Bath : RecoveryStage.Charge;
        var composition = await writing.Db.CompositionOf(command.MaterialId, stage, cancellation);
        if (composition is null) return Written<long>.Refused(await writing.Db.NoComposition("materialId", command.MaterialId, cancellation));

        var weighing = new Weighing
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            HeatId = heat.Id,
            MaterialId = command.MaterialId,
            Kg = command.Kg,
            IntoBath = intoBath,
            Lot = string.IsNullOrWhiteSpace(command.Lot) ? null : command.Lot.Trim(),
        };
        writing.Db.Add(weighing);
        await writing.Book(heat, FurnaceMetalKind.Charged, command.Kg * Arrival.PerKilogram(composition).LiquidKg, cancellation);
        var kind = intoBath ? StockKind.Added : StockKind.Charged;
        await writing.Book(command.MaterialId, kind, -command.Kg, heat.Id, weighing.Lot, cancellation);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(weighing.Id, new ChangeNotice(ChangeKind.Heat, heat.Id), new ChangeNotice(ChangeKind.Material, command.MaterialId));
    }

    /// <summary>A weight may come late: what counts is when it was weighed, before the first coin of the bath or after it; of a heat whose coin was another one's, before it came out of charging or after it.</summary>
    private static async Task<bool> IsIntoBath(RecordsContext db, Heat heat, DateTimeOffset weighedAt, CancellationToken cancellation)
    {
        if (heat.State is HeatState.Charging) return false;
        var coins = db.InForce<Sample>().Where(s => s.HeatId == heat.Id && s.Kind == SampleKind.Bath);
        if (await coins.AnyAsync(cancellation)) return await coins.AnyAsync(s => s.ObservedAt <= weighedAt, cancellation);
        return await db.InForce<HeatStep>().AnyAsync(s => s.HeatId == heat.Id && s.State != HeatState.Charging && s.ObservedAt <= weighedAt, cancellation);
    }
}

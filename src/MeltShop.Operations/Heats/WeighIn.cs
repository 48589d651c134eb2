using MeltShop.Metallurgy.Chain;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Yard;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Heats;

/// <summary>
/// Records a mass that went into the furnace: with the charge, or into the bath as a correction. The scale is right: more than the
/// yard's ledger holds is taken, and the ledger shows it by going below zero. Only what no load can be is refused (<see cref="WeighingBounds"/>).
/// Answers the weighing.
/// </summary>
public sealed class WeighIn(Recorder recorder, TimeProvider time) : Operation<WeighIn.Command, long>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, long MaterialId, double Kg, bool IntoBath)
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
        var stage = command.IntoBath ? RecoveryStage.Bath : RecoveryStage.Charge;
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
            IntoBath = command.IntoBath,
            Lot = string.IsNullOrWhiteSpace(command.Lot) ? null : command.Lot.Trim(),
        };
        writing.Db.Add(weighing);
        await writing.Book(heat, FurnaceMetalKind.Charged, command.Kg * Arrival.PerKilogram(composition).LiquidKg, cancellation);
        var kind = command.IntoBath ? StockKind.Added : StockKind.Charged;
        await writing.Book(command.MaterialId, kind, -command.Kg, heat.Id, weighing.Lot, cancellation);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(weighing.Id, new ChangeNotice(ChangeKind.Heat, heat.Id), new ChangeNotice(ChangeKind.Material, command.MaterialId));
    }
}

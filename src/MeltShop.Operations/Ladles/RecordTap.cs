using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Yard;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>
/// Records the mass that really went into a prepared ladle, more or less than planned. Residual magnesium, the minutes to its floor
/// and the inoculant follow from it; the alloy in the pocket is what it is. Grey iron has no reaction: it pours at once.
/// </summary>
public sealed class RecordTap(Recorder recorder, TimeProvider time) : Operation<RecordTap.Command, RecordTap.Result>(recorder, time)
{
    /// <param name="ObservedAt">When the tap ended.</param>
    /// <param name="TapSeconds">How long it took; null where nobody says.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, Guid Version, double Kg, double? TemperatureC, double? TapSeconds = null)
        : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>What the scale showed with the full ladle and with the empty one, kg; null where the mass was typed.</summary>
        public double? GrossKg { get; init; }

        /// <inheritdoc cref="GrossKg"/>
        public double? TareKg { get; init; }
    }

    /// <param name="MgAfterTreatmentPercent">Predicted residual magnesium at the end of the reaction, %; null for grey iron.</param>
    /// <param name="MinutesToFloor">From then until the floor; null where it never starts above it.</param>
    /// <param name="InoculantKg">Inoculant for the mass really tapped, kg.</param>
    /// <param name="Version">Version of the treated ladle afterwards.</param>
    public sealed record Result(long TapId, double? MgAfterTreatmentPercent, double? MinutesToFloor, double InoculantKg, Guid Version);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Mass("kg", command.Kg);
        if (command.TemperatureC is { } temperature) fields.Temperature("temperatureC", temperature);
        if (command.TapSeconds is { } seconds) fields.NotNegative("tapSeconds", seconds);
    }

    protected override async Task<Written<Result>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var treated = await db.TreatedLadles.FindAsync([command.TreatedLadleId], cancellation);
        if (treated is null) return Refuse("treatedLadleId", "ladle.unknown");
        if (treated.Version != command.Version) return Stale(writing, treated, command.Version);
        if (treated.State != TreatedLadleState.Prepared) return Refuse("treatedLadleId", "state.wrong", treated.State.ToString());
        var heat = (await db.LockedHeat(treated.HeatId, cancellation))!;
        var inFurnace = await db.InFurnace(heat.FurnaceId, cancellation);
        if (command.Kg > await db.AtMost(heat, inFurnace, cancellation))
        {
            return Refuse("kg", "furnace.short", inFurnace);
        }

        var card = await db.PocketCards.AsNoTracking().Where(c => c.TreatedLadleId == treated.Id).OrderBy(c => c.Id).LastAsync(cancellation);
        var at = writing.Stamp.ObservedAt;
        var tap = writing.Tap(treated, card, command.Kg, command.TemperatureC, at, command.TapSeconds is { } seconds ? at.AddSeconds(-seconds) : null, scale: (command.GrossKg, command.TareKg));
        db.Add(tap);
        await writing.Book(heat, FurnaceMetalKind.Tapped, -command.Kg, cancellation);
        var inoculantKg = PocketQuestion.InoculantKg(card.InoculantKg, card.PlannedKg, command.Kg);
        await writing.Book(card.InoculantMaterialId, StockKind.Added, -inoculantKg, heat.Id, card.InoculantLot, cancellation);

        writing.Step(treated, card.MgFloorPercent is null || card.Process == LadleProcess.InMould ? TreatedLadleState.Pouring : TreatedLadleState.Tapped);
        writing.Step(heat, HeatState.Tapping);
        await db.SaveChangesAsync(cancellation);
        return Done(
            new Result(tap.Id, tap.MgAfterTreatmentPercent, tap.MinutesToFloor, inoculantKg, treated.Version),
            new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version),
            new ChangeNotice(ChangeKind.Heat, heat.Id, heat.Version),
            new ChangeNotice(ChangeKind.Furnace, heat.FurnaceId));
    }
}

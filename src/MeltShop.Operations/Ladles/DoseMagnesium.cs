using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Storing;
using MeltShop.Operations.Yard;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>
/// Records magnesium that was given to weighed iron in a ladle: wire, plunging or converter, at first or as a top-up by wire. Residual
/// magnesium and the minutes to its floor follow. A pocket is never topped up. Answers the new version.
/// </summary>
public sealed class DoseMagnesium(Recorder recorder, TimeProvider time) : Operation<DoseMagnesium.Command, Guid>(recorder, time)
{
    /// <param name="StationId">The ladle or station that gave it: its wire and its recovery count.</param>
    /// <param name="Amount">Metres of wire where the station has one; kilograms of the card's alloy otherwise.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, Guid Version, long StationId, double Amount)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields) => fields.Positive("amount", command.Amount);

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var (ladle, finding) = await writing.Find(command.TreatedLadleId, "treatedLadleId", cancellation);
        if (finding is not null) return Written<Guid>.Refused(finding);
        var treated = ladle!.Treated;
        if (treated.Version != command.Version) return Stale(writing, treated, command.Version);
        if (treated.State is not (TreatedLadleState.Tapped or TreatedLadleState.Pouring)) return Refuse("treatedLadleId", "state.wrong", treated.State.ToString());
        var station = await db.Ladles.AsNoTracking().SingleOrDefaultAsync(l => l.Id == command.StationId, cancellation);
        if (station is null) return Refuse("stationId", "ladle.unknown");
        if (ladle.Card is not { Problem: { } stored, MgFloorPercent: { } floor }) return Refuse("treatedLadleId", "magnesium.inGreyIron");
        if (station.WireMgGramsPerMetre is null && ladle.Card.AlloyKg is not null) return Refuse("stationId", "pocket.neverTopUp");

        var at = writing.Stamp.ObservedAt;
        var problem = StoredJson.Value<TreatmentProblem>(stored);
        var times = await LadleTimesRows.One(db, treated.Id, at, cancellation);
        var left = Math.Max(0, (await LadleContents.One(db, treated.Id, cancellation)).LeftKg);
        var dose = Dose(writing, command, ladle, station, problem, times, left, floor);
        db.Add(dose);
        if (dose.MaterialId is { } materialId) await writing.Book(materialId, StockKind.Added, -dose.Kg, treated.HeatId, ladle.Card.AlloyLot, cancellation);
        db.Expect(treated, treated.Version);
        await db.SaveChangesAsync(cancellation);
        return Done(
            treated.Version,
            new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version),
            new ChangeNotice(ChangeKind.Heat, treated.HeatId));
    }

    private static MagnesiumDose Dose(
        Writing writing, Command command, PouringLadle ladle, Ladle station, TreatmentProblem problem, LadleTimes times, double ironKg, double floor)
    {
        var equipment = LadleEquipment.Of(station, null);
        var fade = problem.Recipe.Fade;
        var kg = station.WireMgGramsPerMetre is { } grams ? CoredWire.MagnesiumKg(command.Amount, grams) : command.Amount;
        var now = MagnesiumNow.Percent(times, fade, writing.Stamp.ObservedAt);
        var after = DoseQuestion.After(problem, times, ironKg, kg, equipment, station.MgRecoveryPercent, now);
        var range = MagnesiumNow.Range(times, ladle.Card, writing.Stamp.ObservedAt);
        var least = Banded(ladle.Card.MgRecoveryLeastPercent, range?.LeastPercent);
        var most = Banded(ladle.Card.MgRecoveryMostPercent, range?.MostPercent);
        return new()
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            TreatedLadleId = ladle.Treated.Id,
            MaterialId = station.WireMgGramsPerMetre is null ? ladle.Card.AlloyMaterialId : null,
            Kg = kg,
            WireMetres = station.WireMgGramsPerMetre is null ? null : command.Amount,
            FeedSeconds = station is { WireMgGramsPerMetre: not null, WireMetresPerMinute: { } speed } ? CoredWire.FeedSeconds(command.Amount, speed) : null,
            MgPercent = after,
            MgLeastPercent = least,
            MgMostPercent = most,
            MinutesToFloor = after > floor ? fade.MinutesTo(after, floor) : null,
            LeastMinutesToFloor = least > floor ? (MagnesiumNow.FastestFade(ladle.Card) ?? fade).MinutesTo(least.Value, floor) : null,
        };

        // Where no band is known of what was there, it counts as it stands.
        double? Banded(double? recovery, double? before) => recovery is { } percent ? DoseQuestion.After(problem, times, ironKg, kg, equipment, percent, before ?? now) : null;
    }
}

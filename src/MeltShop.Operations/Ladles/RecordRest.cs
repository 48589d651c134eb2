using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>Where the rest of a ladle went.</summary>
public enum RestWay
{
    /// <summary>Into dry pig moulds.</summary>
    Pigged,

    /// <summary>Back into a furnace.</summary>
    PouredBack,

    /// <summary>Into another ladle with iron in it, or a pouring furnace or trough that it tops up.</summary>
    IntoLadle,

    /// <summary>Into an empty ladle, pouring furnace or trough, which is a filling of its own from then on.</summary>
    IntoEmpty,
}

/// <summary>
/// Records iron that left a ladle otherwise than into a mould: pigged, poured back into a furnace with its mass and analysis, poured over
/// into an empty ladle, or poured into another ladle, a pouring furnace or a trough, whose magnesium is reckoned anew from the mixture.
/// Answers what is left, kg.
/// </summary>
public sealed class RecordRest(Recorder recorder, TimeProvider time) : Operation<RecordRest.Command, double>(recorder, time)
{
    /// <param name="IntoId">The heat in whose furnace it went, the filled ladle, or the equipment that was empty; null for pig moulds.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, RestWay Way, long? IntoId, double Kg, string? Reason)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Choice("way", command.Way);
        fields.Mass("kg", command.Kg);
        fields.OptionalText("reason", command.Reason, 500);
        if (command.Way != RestWay.Pigged && command.IntoId is null) fields.Add(Into(command.Way), "choice.missing");
    }

    protected override async Task<Written<double>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var (ladle, finding) = await writing.Find(command.TreatedLadleId, "treatedLadleId", cancellation);
        if (finding is not null) return Written<double>.Refused(finding);
        var into = command.Way == RestWay.IntoEmpty ? await Open(writing, command, ladle!, cancellation)
            : command.Way == RestWay.IntoLadle ? await db.TreatedLadles.FindAsync([command.IntoId!.Value], cancellation) : null;
        await db.LockLadles(cancellation, into is null ? [ladle!.Treated] : [ladle!.Treated, into]);
        var mass = await LadleMass.Load(db, ladle.Treated.Id, ladle.Tap.Kg, cancellation);
        if (command.Kg > mass.AtMostKg) return Refuse("kg", "ladle.short", Math.Max(0, mass.LeftKg));

        ChangeNotice[] notices = [new(ChangeKind.TreatedLadle, ladle.Treated.Id, ladle.Treated.Version), new(ChangeKind.Heat, ladle.Treated.HeatId)];
        switch (command.Way)
        {
            case RestWay.PouredBack:
                var heat = await db.Heats.FindAsync([command.IntoId!.Value], cancellation);
                if (heat is null) return Refuse("heatId", "heat.unknown");
                if (!heat.IsInFurnace()) return Refuse("heatId", "state.wrong", heat.State.ToString());
                await db.LockFurnace(heat.FurnaceId, cancellation);
                if (await writing.PourBack(heat, command.Kg, ladle.Treated.Id, Analysis.Empty, command.Reason, cancellation) is { } against)
                {
                    return Written<double>.Refused(against);
                }

                notices = [.. notices, new(ChangeKind.Heat, heat.Id), new(ChangeKind.Furnace, heat.FurnaceId)];
                break;
            case RestWay.IntoEmpty when into is null:
                return Refuse("vesselId", "ladle.busy");
            case RestWay.IntoLadle or RestWay.IntoEmpty:
                var (rest, wrong) = await Mix(writing, command, ladle, into, cancellation);
                if (wrong is not null) return Written<double>.Refused(wrong);
                db.Add(rest!);
                notices = [.. notices, new(ChangeKind.TreatedLadle, into!.Id, into.Version)];
                break;
            default:
                db.Add(Rest(writing, command, null, null, null, null, null, null));
                break;
        }

        await db.SaveChangesAsync(cancellation);
        return Done(mass.LeftKg - command.Kg, notices);
    }

    private static string Into(RestWay way) => way switch { RestWay.IntoLadle => "intoLadleId", RestWay.IntoEmpty => "vesselId", _ => "heatId" };

    private static async Task<TreatedLadle?> Open(Writing writing, Command command, PouringLadle from, CancellationToken ct) =>
        await writing.Db.Ladles.FindAsync([command.IntoId!.Value], ct) is { } vessel && vessel.Id != from.Treated.LadleId ? await writing.PourOver(from, vessel, command.Kg, ct) : null;

    private static async Task<(LadleRest? Fact, Finding? Finding)> Mix(
        Writing writing, Command command, PouringLadle from, TreatedLadle? into, CancellationToken ct)
    {
        if (into is null || into.Id == from.Treated.Id) return (null, new Finding("intoLadleId", "ladle.unknown"));
        if (into.State is not (TreatedLadleState.Tapped or TreatedLadleState.Pouring)) return (null, new Finding("intoLadleId", "state.wrong", into.State.ToString()));
        var (target, finding) = await writing.Find(into.Id, "intoLadleId", ct);
        if (finding is not null) return (null, finding);
        if (target!.Card.MgFloorPercent is null && from.Card.MgFloorPercent is not null) return (null, new Finding("intoLadleId", "ladle.treatedIntoGrey"));
        var at = writing.Stamp.ObservedAt;
        var times = await LadleTimesRows.Load(writing.Db, [from.Treated.Id, into.Id], at, ct);
        var there = await LadleMass.Load(writing.Db, into.Id, target.Tap.Kg, ct);
        var inoculated = times[from.Treated.Id].InoculatedAt ?? times[from.Treated.Id].TappedAt;
        var sample = await writing.Db.InForce<Sample>().Where(s => s.TreatedLadleId == from.Treated.Id && s.ObservedAt <= at && s.Means.Count > 0)
            .OrderByDescending(s => s.ObservedAt).Select(s => (long?)s.Id).FirstOrDefaultAsync(ct);
        if (target.Card.MgFloorPercent is not { } floor || MagnesiumNow.FadeOf(target.Card) is not { } fade)
        {
            return (Rest(writing, command, into.Id, null, null, null, inoculated, sample), null);
        }

        var comes = MagnesiumNow.Percent(times[from.Treated.Id], MagnesiumNow.FadeOf(from.Card), at);
        var mixed = MagnesiumNow.Mixed(Math.Max(0, there.LeftKg), MagnesiumNow.Percent(times[into.Id], fade, at), command.Kg, comes);
        return (Rest(writing, command, into.Id, mixed, mixed > floor ? fade.MinutesTo(mixed, floor) : null, comes, inoculated, sample), null);
    }

    private static LadleRest Rest(
        Writing writing, Command command, long? intoId, double? mixed, double? minutes, double? comes, DateTimeOffset? inoculated, long? sampleId) => new()
    {
        EntryKey = writing.Stamp.EntryKey,
        PersonId = writing.Stamp.PersonId,
        ObservedAt = writing.Stamp.ObservedAt,
        EnteredAt = writing.Stamp.EnteredAt,
        Reason = command.Reason,
        TreatedLadleId = command.TreatedLadleId,
        IntoLadleId = intoId,
        Kg = command.Kg,
        MixedMgPercent = mixed,
        MinutesToFloor = minutes,
        CameMgPercent = comes,
        InoculatedAt = inoculated,
        SampleId = sampleId,
    };
}

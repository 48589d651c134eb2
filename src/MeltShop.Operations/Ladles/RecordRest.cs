using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Writing;

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
        var (into, against) = command.Way switch
        {
            RestWay.IntoEmpty => await Open(writing, command, ladle!, cancellation),
            RestWay.IntoLadle => (await db.TreatedLadles.FindAsync([command.IntoId!.Value], cancellation), null),
            _ => ((TreatedLadle?)null, (Finding?)null),
        };
        if (against is not null) return Written<double>.Refused(against);
        await db.LockLadles(cancellation, into is null ? [ladle!.Treated] : [ladle!.Treated, into]);
        var mass = await LadleContents.One(db, ladle.Treated.Id, cancellation);
        if (command.Kg > mass.AtMostKg) return Refuse("kg", "ladle.short", Math.Max(0, mass.LeftKg));

        ChangeNotice[] notices = [new(ChangeKind.TreatedLadle, ladle.Treated.Id, ladle.Treated.Version), new(ChangeKind.Heat, ladle.Treated.HeatId)];
        switch (command.Way)
        {
            case RestWay.PouredBack:
                var heat = await db.LockedHeat(command.IntoId!.Value, cancellation);
                if (heat is null) return Refuse("heatId", "heat.unknown");
                if (!heat.IsInFurnace()) return Refuse("heatId", "state.wrong", heat.State.ToString());
                if (await writing.PourBack(heat, command.Kg, ladle.Treated.Id, Analysis.Empty, command.Reason, cancellation) is { } finds)
                {
                    return Written<double>.Refused(finds);
                }

                notices = [.. notices, new(ChangeKind.Heat, heat.Id), new(ChangeKind.Furnace, heat.FurnaceId)];
                break;
            case RestWay.IntoLadle or RestWay.IntoEmpty:
                var (mixing, wrong) = await Mixing.Of(writing, ladle, into, command.Kg, cancellation);
                if (wrong is not null) return Written<double>.Refused(wrong);
                db.Add(Rest(writing, command, into!.Id, mixing));
                await db.SaveChangesAsync(cancellation);
                notices = [.. notices, new(ChangeKind.TreatedLadle, into.Id, into.Version), .. await writing.HoldFed(ladle.Treated.Id, command.Reason, cancellation)];
                break;
            default:
                db.Add(Rest(writing, command, null, null));
                break;
        }

        await db.SaveChangesAsync(cancellation);
        return Done(mass.LeftKg - command.Kg, notices);
    }

    private static string Into(RestWay way) => way switch { RestWay.IntoLadle => "intoLadleId", RestWay.IntoEmpty => "vesselId", _ => "heatId" };

    private static async Task<(TreatedLadle? Opened, Finding? Finding)> Open(Writing writing, Command command, PouringLadle from, CancellationToken ct) =>
        await writing.Db.Ladles.FindAsync([command.IntoId!.Value], ct) is { } vessel && vessel.Id != from.Treated.LadleId
            ? await writing.PourOver(from, vessel, command.Kg, ct) : (null, new Finding("vesselId", "ladle.busy"));

    private static LadleRest Rest(Writing writing, Command command, long? intoId, Mixing? mixing) => new()
    {
        EntryKey = writing.Stamp.EntryKey,
        PersonId = writing.Stamp.PersonId,
        ObservedAt = writing.Stamp.ObservedAt,
        EnteredAt = writing.Stamp.EnteredAt,
        Reason = command.Reason,
        TreatedLadleId = command.TreatedLadleId,
        IntoLadleId = intoId,
        Kg = command.Kg,
        MixedMgPercent = mixing?.MgPercent,
        MixedMgLeastPercent = mixing?.Range?.LeastPercent,
        MixedMgMostPercent = mixing?.Range?.MostPercent,
        MinutesToFloor = mixing?.MinutesToFloor,
        LeastMinutesToFloor = mixing?.LeastMinutesToFloor,
        CameMgPercent = mixing?.CameMgPercent,
        InoculatedAt = mixing?.InoculatedAt,
        SampleId = mixing?.SampleId,
    };
}

using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Correcting;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>
/// Sets the ledger of a furnace to what a dipped level or a load cell shows; the difference is a line of its own. With no heat in the
/// furnace it is also how a heel comes into the records, or is drained. Answers the change, kg.
/// </summary>
public sealed class DipFurnace(Recorder recorder, TimeProvider time) : Operation<DipFurnace.Command, double>(recorder, time)
{
    /// <param name="Kg">Liquid in the furnace.</param>
    /// <param name="Percents">Analysis of a heel by element symbol; null to keep the one on record. A heat in the furnace has its samples.</param>
    /// <param name="PlusMinusKg">How far the dip or the load cell may be off either way; null where nobody can say.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long FurnaceId, double Kg, IReadOnlyDictionary<string, double>? Percents, string Reason,
        double? PlusMinusKg = null) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.MassOrZero("kg", command.Kg);
        if (command.PlusMinusKg is { } plusMinus) fields.MassOrZero("plusMinusKg", plusMinus);
        fields.Text("reason", command.Reason, 500);
        if (command.Percents is { } percents) fields.Analysis("percents", percents.Select(p => (p.Key, p.Value)));
    }

    protected override async Task<Written<double>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var furnace = await db.Furnaces.AsNoTracking().SingleOrDefaultAsync(f => f.Id == command.FurnaceId, cancellation);
        if (furnace is null) return Refuse("furnaceId", "furnace.unknown");
        if (command.Kg > furnace.CapacityKg) return Refuse("kg", "furnace.capacity", furnace.CapacityKg);
        await db.LockFurnace(furnace.Id, cancellation);
        var heat = await db.Heats
            .Where(h => h.FurnaceId == furnace.Id)
            .SingleOrDefaultAsync(h => h.State == HeatState.Charging || h.State == HeatState.Bath || h.State == HeatState.Tapping, cancellation);
        if (heat is not null && command.Percents is not null) return Refuse("percents", "furnace.busy", heat.Number);

        var change = command.Kg - await db.InFurnace(furnace.Id, writing.Stamp.ObservedAt, cancellation);
        await writing.Insert(Line(writing.Stamp, command, heat?.Id, change), cancellation);
        if (heat is null) db.Add(Heel(writing.Stamp, command, await OnRecord(db, command, cancellation)));
        ChangeNotice[] notices = [new(ChangeKind.Furnace, furnace.Id)];
        return Done(change, heat is null ? notices : [.. notices, new(ChangeKind.Heat, heat.Id)]);
    }

    private static async Task<Heel?> OnRecord(RecordsContext db, Command command, CancellationToken cancellation) =>
        await db.InForce<Heel>().AsNoTracking().Include(h => h.Percents)
            .Where(h => h.FurnaceId == command.FurnaceId).OrderByDescending(h => h.ObservedAt).ThenByDescending(h => h.Id)
            .FirstOrDefaultAsync(cancellation);

    private static FurnaceMetal Line(Stamp stamp, Command command, long? heatId, double changeKg) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        Reason = command.Reason,
        FurnaceId = command.FurnaceId,
        HeatId = heatId,
        Kind = FurnaceMetalKind.Dipped,
        Kg = changeKg,
        LevelKg = command.Kg,
        PlusMinusKg = command.PlusMinusKg,
    };

    private static Heel Heel(Stamp stamp, Command command, Heel? before) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        Reason = command.Reason,
        FurnaceId = command.FurnaceId,
        FromHeatId = command.Percents is null ? before?.FromHeatId : null,
        SampleId = command.Percents is null ? before?.SampleId : null,
        Kg = command.Kg,
        Percents = command.Percents is { } percents
            ? [.. percents.Select(p => new HeelPercent { Element = Element.Parse(p.Key), Percent = p.Value })]
            : [.. (before?.Percents ?? []).Select(p => new HeelPercent { Element = p.Element, Percent = p.Percent })],
    };
}

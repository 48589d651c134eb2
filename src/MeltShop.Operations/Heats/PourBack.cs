using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Ladles;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>
/// Records liquid iron that was poured back into the furnace, with the analysis that it brings: that of the ladle it came from, or one
/// that a person says. Answers what is in the furnace by the ledger, kg.
/// </summary>
public sealed class PourBack(Recorder recorder, TimeProvider time) : Operation<PourBack.Command, double>(recorder, time)
{
    /// <param name="TreatedLadleId">The ladle that it came from; null for other iron.</param>
    /// <param name="Percents">Analysis of other iron by element symbol.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, long? TreatedLadleId, double Kg, IReadOnlyDictionary<string, double>? Percents,
        string Reason) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Mass("kg", command.Kg);
        fields.Text("reason", command.Reason, 500);
        if (command.Percents is { } percents) fields.Analysis("percents", percents.Select(p => (p.Key, p.Value)));
        if (command.TreatedLadleId is null && command.Percents is not { Count: > 0 }) fields.Add("percents", "pourBack.analysisMissing");
    }

    protected override async Task<Written<double>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var heat = await db.Heats.FindAsync([command.HeatId], cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (!heat.IsInFurnace()) return Refuse("heatId", "state.wrong", heat.State.ToString());
        await db.LockFurnace(heat.FurnaceId, cancellation);
        var capacity = await db.Furnaces.Where(f => f.Id == heat.FurnaceId).Select(f => f.CapacityKg).SingleAsync(cancellation);
        var inFurnace = await db.InFurnace(heat.FurnaceId, cancellation);
        if (inFurnace + command.Kg > capacity) return Refuse("kg", "furnace.capacity", capacity);

        var analysis = Analysis.Of((command.Percents ?? new Dictionary<string, double>()).Select(p => KeyValuePair.Create(Element.Parse(p.Key), p.Value)));
        if (command.TreatedLadleId is { } id)
        {
            var treated = await db.TreatedLadles.FindAsync([id], cancellation);
            var tap = await db.InForce<Tap>().AsNoTracking().SingleOrDefaultAsync(t => t.TreatedLadleId == id, cancellation);
            if (treated is null || tap is null) return Refuse("treatedLadleId", "ladle.unknown");
            var left = tap.Kg - await db.InForce<FurnaceMetal>().Where(m => m.TreatedLadleId == id).SumAsync(m => m.Kg, cancellation);
            if (command.Kg > left) return Refuse("kg", "pourBack.overTap", left);
            analysis = await OfLadle(db, treated, tap, cancellation);
        }

        db.Add(Line(writing.Stamp, command, heat, analysis));
        ChangeNotice[] notices = [new(ChangeKind.Heat, heat.Id), new(ChangeKind.Furnace, heat.FurnaceId)];
        return Done(
            inFurnace + command.Kg, command.TreatedLadleId is { } ladle ? [.. notices, new(ChangeKind.TreatedLadle, ladle)] : notices);
    }

    /// <summary>The last sample of the ladle, completed by what the chain says; the bath that it was tapped from where it was not treated.</summary>
    private static async Task<Analysis> OfLadle(RecordsContext db, TreatedLadle treated, Tap tap, CancellationToken cancellation)
    {
        var heat = await db.Heats.AsNoTracking().SingleAsync(h => h.Id == treated.HeatId, cancellation);
        var chain = await PouredIron.ThroughChain(db, treated, minutes: 0, cancellation);
        var predicted = chain?.Analysis ?? (await BathNow.Load(db, heat, tap.ObservedAt, cancellation))?.Metal.Analysis ?? Analysis.Empty;
        var sample = await db.InForce<Sample>().AsNoTracking().Include(s => s.Means)
            .Where(s => s.TreatedLadleId == treated.Id && s.Means.Count > 0)
            .OrderByDescending(s => s.ObservedAt).ThenByDescending(s => s.Id).FirstOrDefaultAsync(cancellation);
        if (sample is null) return predicted;
        var sampled = PouredIron.Of(Analysis.Of(sample.Means.Select(m => KeyValuePair.Create(m.Element, m.Percent))), chain);
        return Analysis.Of(sampled.Concat(predicted.Where(p => !sampled.Has(p.Key))));
    }

    private static FurnaceMetal Line(Stamp stamp, Command command, Heat heat, Analysis analysis) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        Reason = command.Reason,
        FurnaceId = heat.FurnaceId,
        HeatId = heat.Id,
        Kind = FurnaceMetalKind.PouredBack,
        Kg = command.Kg,
        TreatedLadleId = command.TreatedLadleId,
        Percents = [.. analysis.Select(p => new FurnaceMetalPercent { Element = p.Key, Percent = p.Value })],
    };
}

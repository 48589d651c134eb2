using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>
/// Ends a heat. What is left in the furnace, less what is pigged out, is the next heat's heel, with the analysis of the last bath
/// sample and of what was added after it. Ladles that are still pouring are held until somebody decides.
/// </summary>
public sealed class CloseHeat(Recorder recorder, TimeProvider time) : Operation<CloseHeat.Command, CloseHeat.Result>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, Guid Version, double PiggedKg)
        : Operations.Command(EntryKey, ObservedAt);

    /// <param name="HeelKg">What stays in the furnace, kg.</param>
    /// <param name="Analysis">Its percents by element symbol; empty where nothing stays, without carbon where nothing tells it.</param>
    public sealed record Result(double HeelKg, IReadOnlyDictionary<string, double> Analysis);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields) => fields.MassOrZero("piggedKg", command.PiggedKg);

    protected override async Task<Written<Result>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var heat = await db.LockedHeat(command.HeatId, cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (heat.Version != command.Version) return Stale(writing, heat, command.Version);

        var ladles = await db.TreatedLadles.Where(l => l.HeatId == heat.Id).ToListAsync(cancellation);
        var bath = await BathNow.Load(db, heat, cancellation);
        var inFurnace = await db.InFurnace(heat.FurnaceId, cancellation);
        var left = inFurnace - command.PiggedKg;
        var findings = Findings(heat, ladles, bath, inFurnace, command.PiggedKg, await db.AtMost(heat, inFurnace, cancellation)).ToList();
        if (findings.Count > 0) return Written<Result>.Refused(findings);

        if (command.PiggedKg > 0) await writing.Book(heat, FurnaceMetalKind.Pigged, -command.PiggedKg, cancellation);
        if (left < FurnaceLedger.Dust)
        {
            // Emptied by weight: the estimate of the yields was off by what is left over on paper, and this line says so. What may be off starts from here. A minus before a nought would not come back from SQLite.
            if (left != 0 || await db.Handled(heat, cancellation) > 0) await writing.Book(heat, FurnaceMetalKind.Dipped, 0 - left, cancellation, levelKg: 0);
            left = 0;
        }

        var analysis = left > 0 ? bath!.Metal.Analysis : Analysis.Empty;
        db.Add(writing.Stamp.Heel(heat, left, analysis, left > 0 ? bath!.SampleId : null));
        foreach (var ladle in ladles.Where(l => l.State == TreatedLadleState.Pouring)) writing.Step(ladle, TreatedLadleState.Held);
        writing.Step(heat, HeatState.Closed);
        heat.ClosedAt = writing.Stamp.ObservedAt;
        await db.SaveChangesAsync(cancellation);
        return Done(
            new Result(left, analysis.ToDictionary(p => p.Key.Symbol, p => p.Value)),
            new ChangeNotice(ChangeKind.Heat, heat.Id, heat.Version),
            new ChangeNotice(ChangeKind.Furnace, heat.FurnaceId));
    }

    private static IEnumerable<Finding> Findings(
        Heat heat, List<TreatedLadle> ladles, BathNow? bath, double inFurnace, double piggedKg, double atMostKg)
    {
        if (!heat.IsInFurnace()) yield return new Finding("heatId", "state.wrong", heat.State.ToString());
        foreach (var ladle in ladles.Where(l => l.State is TreatedLadleState.Prepared or TreatedLadleState.Tapped))
        {
            yield return new Finding("heatId", "ladle.unpoured", ladle.Ordinal, ladle.State.ToString());
        }

        if (bath is null && inFurnace - piggedKg > FurnaceLedger.Dust) yield return new Finding("heatId", "heat.noBathSample");
        if (piggedKg > atMostKg) yield return new Finding("piggedKg", "furnace.short", inFurnace);
    }
}

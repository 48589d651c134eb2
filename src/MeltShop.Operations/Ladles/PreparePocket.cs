using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Storing;
using MeltShop.Operations.Yard;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>
/// Prepares a ladle before the tap: the pocket card says what goes in and when to stop. The alloy leaves the yard with it. A ladle
/// that is filled anew has been poured out: what it poured before is held.
/// </summary>
public sealed class PreparePocket(Recorder recorder, TimeProvider time) : Operation<PreparePocket.Command, PreparePocket.Result>(recorder, time)
{
    /// <inheritdoc cref="PocketChoice"/>
    public sealed record Command(
        Guid EntryKey,
        DateTimeOffset ObservedAt,
        long HeatId,
        long LadleId,
        double PlannedKg,
        double TemperatureC,
        double? BaseSulphurPercent,
        double? TargetMgPercent,
        double? MgFloorPercent,
        double? MinutesToLastMould,
        long? AlloyMaterialId,
        long InoculantMaterialId,
        double InoculantRatePercent) : Operations.Command(EntryKey, ObservedAt)
    {
        /// <inheritdoc cref="PocketExtras"/>
        public PocketExtras Extras { get; init; } = new();

        internal PocketChoice Choice => new(
            PlannedKg, TemperatureC, BaseSulphurPercent, TargetMgPercent, MgFloorPercent, MinutesToLastMould, InoculantRatePercent) { Extras = Extras };
    }

    public sealed record Result(long TreatedLadleId);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields) => PocketQuestion.Check(fields, command.Choice);

    protected override async Task<Written<Result>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var heat = await db.LockedHeat(command.HeatId, cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (!heat.IsInFurnace()) return Refuse("heatId", "state.wrong", heat.State.ToString());
        await db.LockLadle(command.LadleId, cancellation);
        var ladle = await db.Ladles.FindAsync([command.LadleId], cancellation);
        if (ladle is null) return Refuse("ladleId", "ladle.unknown");
        if (!ladle.IsActive) return Refuse("ladleId", "ladle.outOfUse");
        if (PouringVessel.Is(ladle.Process)) return Refuse("ladleId", "ladle.filledFromLadles");
        var earlier = await db.TreatedLadles
            .Where(l => l.LadleId == ladle.Id)
            .Where(l => l.State == TreatedLadleState.Prepared || l.State == TreatedLadleState.Tapped || l.State == TreatedLadleState.Pouring)
            .ToListAsync(cancellation);
        if (earlier.Any(l => l.State != TreatedLadleState.Pouring)) return Refuse("ladleId", "ladle.busy");
        var inoculant = await db.Materials.AsNoTracking().SingleOrDefaultAsync(m => m.Id == command.InoculantMaterialId, cancellation);
        if (inoculant is null) return Refuse("inoculantMaterialId", "material.unknown");
        if (!inoculant.IsActive) return Refuse("inoculantMaterialId", "material.outOfUse");

        var bath = await BathNow.Load(db, heat, cancellation);
        if (bath is null) return Refuse("heatId", "heat.noBathSample");
        var facts = await PocketFacts.Load(db, heat, ladle, bath, command.AlloyMaterialId, command.InoculantMaterialId, command.Extras, cancellation);
        if (PocketChecks.For(facts.Family).Except(command.Extras.Checks).Any()) return Refuse("", "checks.open");
        var (answer, findings) = PocketQuestion.Build(facts, command.Choice);
        if (answer is null) return Written<Result>.Refused(findings);

        foreach (var poured in earlier) writing.Step(poured, TreatedLadleState.Held);
        var ordinal = await db.TreatedLadles.Where(l => l.HeatId == heat.Id).MaxAsync(l => (int?)l.Ordinal, cancellation) ?? 0;
        var treated = new TreatedLadle { HeatId = heat.Id, LadleId = ladle.Id, Ordinal = ordinal + 1, State = TreatedLadleState.Prepared };
        db.Add(treated);
        await db.SaveChangesAsync(cancellation);

        db.Add(Card(writing.Stamp, treated.Id, command, facts, answer));
        var lots = command.Extras.Lots;
        (long? MaterialId, double? Kg, string? Lot)[] loaded =
        [
            (facts.AlloyMaterialId, answer.AlloyKg, lots.Alloy), (command.Extras.CoverMaterialId, answer.CoverKg, lots.Cover),
            (command.Extras.PearliteMaterialId, answer.PearliteKg, lots.Pearlite),
        ];
        foreach (var (materialId, kg, lot) in loaded)
        {
            if (materialId is { } id && kg > 0) await writing.Book(id, StockKind.Added, -kg.Value, heat.Id, lot?.Trim(), cancellation);
        }

        await db.SaveChangesAsync(cancellation);
        return Done(
            new Result(treated.Id),
            [
                new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version),
                new ChangeNotice(ChangeKind.Heat, heat.Id, heat.Version),
                .. earlier.Select(l => new ChangeNotice(ChangeKind.TreatedLadle, l.Id, l.Version)),
            ]);
    }

    private static PocketCard Card(Stamp stamp, long treatedLadleId, Command command, PocketFacts facts, PocketAnswer answer) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        TreatedLadleId = treatedLadleId,
        PlannedKg = command.PlannedKg,
        TemperatureC = command.TemperatureC,
        BaseSulphurPercent = answer.Problem?.BaseAnalysis[Metallurgy.Elements.Element.S],
        TargetMgPercent = answer.Problem?.TargetMgPercent,
        MgFloorPercent = answer.MgFloorPercent,
        MinutesToLastMould = answer.Problem?.AtMinutes,
        AlloyMaterialId = answer.Problem is null ? null : facts.AlloyMaterialId,
        AlloyKg = answer.AlloyKg,
        AlloyLot = answer.Problem is null ? null : command.Extras.Lots.Alloy?.Trim(), // plunged alloy, too, has a lot
        NeededAlloyKg = answer.Treatment?.AlloyKg,
        LargestIronKg = answer.LargestIronKg,
        CoverMaterialId = answer.CoverKg is null ? null : command.Extras.CoverMaterialId,
        CoverKg = answer.CoverKg,
        CoverLot = answer.CoverKg is null ? null : command.Extras.Lots.Cover?.Trim(),
        InoculantLot = command.Extras.Lots.Inoculant?.Trim(),
        StreamInoculantKg = answer.StreamInoculantKg,
        MouldInoculantKg = answer.MouldInoculantKg,
        PearliteMaterialId = answer.PearliteKg is null ? null : command.Extras.PearliteMaterialId,
        PearliteKg = answer.PearliteKg,
        PearliteLot = answer.PearliteKg is null ? null : command.Extras.Lots.Pearlite?.Trim(),
        Process = answer.Problem is null ? null : facts.Ladle.Process,
        MgRecoveryLeastPercent = answer.RecoveryBand?.Least,
        MgRecoveryMostPercent = answer.RecoveryBand?.Most,
        MgFadeMostPercentPerMinute = facts.Figures.GetValueOrDefault(LadleFigureKind.MgFade)?.Most,
        MgFadeLeastPercentPerMinute = facts.Figures.GetValueOrDefault(LadleFigureKind.MgFade)?.Least,
        HeatLossKPerMinute = facts.Ladle.HeatLossKPerMinute,
        TreatmentLossK = facts.Ladle.TreatmentLossK,
        LeastPouringC = facts.Ladle.LeastPouringC,
        InoculationMinutes = facts.Ladle.InoculationMinutes,
        HouseMinutes = facts.Ladle.HouseMinutes,
        Checks = string.Join(' ', PocketChecks.For(facts.Family)),
        InoculantMaterialId = command.InoculantMaterialId,
        InoculantKg = answer.InoculantKg,
        StopWeightKg = answer.StopWeightKg,
        Problem = answer.Problem is null ? null : StoredJson.Text(answer.Problem),
        Answer = answer.Treatment is null ? null : StoredJson.Text(StoredTreatment.Of(answer.Treatment)),
        Versions = FormulaVersions.ForPocket(facts.AlloyAnalysisId, facts.BathSampleId),
    };
}

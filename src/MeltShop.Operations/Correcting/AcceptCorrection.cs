using System.Text.Json.Serialization;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Chain;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Storing;
using MeltShop.Records.Heats;
using MeltShop.Records.Keeping;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>
/// Keeps a correction as a task for the melter, with all that it used. It is solved here, whatever a page showed before; where it does
/// not bring the bath into its window it is refused, and so is one for a sample that is no longer the last, or that comes out otherwise
/// than the person saw it: an addition or a price came meanwhile. Answers the correction.
/// </summary>
public sealed class AcceptCorrection(Recorder recorder, TimeProvider time, CorrectionForecast forecast)
    : Operation<AcceptCorrection.Command, long>(recorder, time)
{
    /// <param name="SampleId">The sample that the person saw.</param>
    /// <param name="Seen">The correction that the person saw.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, long SampleId, CorrectionChoice Choice, SeenCorrection Seen)
        : Operations.Command(EntryKey, ObservedAt)
    {
        [JsonIgnore]
        internal Solution? Solution { get; init; }
    }

    internal sealed record Solution(CorrectionFacts? Facts, CorrectionProblem? Problem, CorrectionProposal? Proposal, IReadOnlyList<Finding> Findings);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields) => fields.Check(command.Choice);

    protected override async Task<Command> Ready(Command command, CancellationToken cancellation)
    {
        var facts = await forecast.Facts(command.HeatId, cancellation);
        if (facts is null) return command with { Solution = new(null, null, null, [new Finding("heatId", "bath.unknown")]) };
        if (facts.Bath.SampleId != command.SampleId) return command with { Solution = new(facts, null, null, [new Finding("sampleId", "sample.notLast")]) };

        var (problem, findings) = CorrectionQuestion.Build(facts, command.Choice);
        var proposal = problem is null ? null : CorrectionProposal.For(facts, command.Choice, problem, cancellation);
        if (proposal is { IsReached: false }) findings = [new Finding("", proposal.IsImpossible ? "correction.impossible" : "correction.notFound")];
        else if (proposal is { IsIdle: true }) findings = [new Finding("", "correction.idle")];
        else if (proposal is not null && !SeenCorrection.Of(proposal).IsAs(command.Seen)) findings = [new Finding("", "correction.moved")];
        return command with { Solution = new(facts, problem, proposal, findings) };
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var solution = command.Solution!;
        if (solution.Findings.Count > 0) return Written<long>.Refused(solution.Findings);
        var heat = await writing.Db.LockedHeat(command.HeatId, cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (!heat.IsInFurnace()) return Refuse("heatId", "state.wrong", heat.State.ToString());
        // What came between the solution and the lock.
        var bath = await BathNow.Load(writing.Db, heat, cancellation);
        if (bath?.SampleId != command.SampleId) return Refuse("sampleId", "sample.notLast");
        var read = solution.Facts!.View.Materials.ToDictionary(m => m.Id, m => m.Version);
        var ids = read.Keys.ToList();
        var changed = await writing.Db.Materials.Where(m => ids.Contains(m.Id)).Select(m => new { m.Id, m.Version }).ToListAsync(cancellation);
        if (!IsAs(bath.Metal, solution.Facts.Bath.Metal) || changed.Exists(m => m.Version != read[m.Id])) return Refuse("", "correction.moved");

        var correction = new BathCorrection
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            HeatId = heat.Id,
            SampleId = command.SampleId,
            Goal = command.Choice.Goal.ToString(),
            Problem = StoredJson.Text(solution.Problem!),
            Answer = StoredJson.Text(solution.Proposal!),
            Versions = FormulaVersions.ForCharge(solution.Facts!.View.Materials.Select(m => m.Analysis?.Id).OfType<long>()),
            TotalCost = Money.Rounded((decimal)solution.Proposal!.Cost),
        };
        writing.Db.Add(correction);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(correction.Id, new ChangeNotice(ChangeKind.Heat, heat.Id));
    }

    // To the last digits of a sum.
    private static bool IsAs(Metal now, Metal then) => Math.Abs(now.Kg - then.Kg) < 1e-6
        && now.Analysis.Elements.Union(then.Analysis.Elements).All(e => Math.Abs(now.Analysis.OrZero(e) - then.Analysis.OrZero(e)) < 1e-9);
}

using System.Text.Json.Serialization;
using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Storing;
using MeltShop.Records.Heats;
using MeltShop.Records.Keeping;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Charging;

/// <summary>
/// Keeps a charge plan with all that it used. It is solved here, whatever a page showed before; a plan that does not meet its
/// limits is refused, and the findings name those that clash. A charge that was made by hand is checked and not changed; one that misses
/// something is kept only for those who may answer for it.
/// </summary>
public sealed class PlanCharge(Recorder recorder, TimeProvider time, ChargePage page)
    : Operation<PlanCharge.Command, PlanCharge.Result>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, ChargeChoice Choice) : Operations.Command(EntryKey, ObservedAt)
    {
        [JsonIgnore]
        internal Solution? Solution { get; init; }
    }

    public sealed record Result(long PlanId);

    /// <summary>The question and its answer, from the yard as it was when the plan was asked for.</summary>
    internal sealed record Solution(ChargeView Data, ChargeProblem? Problem, ChargePlan? Answer, IReadOnlyList<Finding> Findings)
    {
        /// <summary>How much a charge that was made by hand misses.</summary>
        public int Misses { get; init; }
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    /// <summary>Who may keep a charge that misses what was asked, knowing that it does.</summary>
    public static IReadOnlyList<string> MayMiss { get; } = [Role.Metallurgist, Role.Supervisor];

    /// <summary>What solving leaves over of a charge that fills its furnace.</summary>
    private const double Room = 1e-6;

    protected override void Check(Command command, FieldCheck fields) => fields.Check(command.Choice);

    protected override async Task<Command> Ready(Command command, CancellationToken cancellation)
    {
        var data = await page.Load(cancellation);
        var (problem, findings) = ChargeQuestion.Build(data, command.Choice);
        if (problem is not null && command.Choice.ByHand is { } masses)
        {
            var made = HandCharge.Of(problem, masses);
            var capacity = data.Furnaces.Single(furnace => furnace.Id == command.Choice.FurnaceId).CapacityKg;
            // Nobody may answer for metal that has no room.
            if (made.Checked.LiquidKg > capacity * (1 + Room)) findings = [new("byHand", "furnace.overfilled", Math.Ceiling(made.Checked.LiquidKg), capacity)];
            return command with { Solution = new Solution(data, problem, made.AsPlan, findings) { Misses = made.Checked.Misses.Count } };
        }

        var answer = problem is null ? null : ChargeOptimiser.Explained(problem, cancellation);
        if (answer is not null && answer.Status != PlanStatus.Optimal && answer.Lines.Count == 0) findings = [.. Clashes(answer)];
        return command with { Solution = new Solution(data, problem, answer, findings) };
    }

    protected override async Task<Written<Result>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var solution = command.Solution!;
        if (solution.Findings.Count > 0) return Written<Result>.Refused(solution.Findings);
        if (solution.Misses > 0 && !writing.Acting.HoldsAny(MayMiss)) return Refuse("byHand", "plan.misses", solution.Misses, string.Join(", ", MayMiss));

        var plan = Plan(writing.Stamp, command.Choice, solution.Data, solution.Problem!, solution.Answer!);
        writing.Db.Add(plan);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(new Result(plan.Id), new ChangeNotice(ChangeKind.Plan, plan.Id));
    }

    private static Plan Plan(Stamp stamp, ChargeChoice choice, ChargeView data, ChargeProblem problem, ChargePlan answer) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        FurnaceId = choice.FurnaceId,
        GradeId = choice.GradeId,
        MeltKg = problem.MeltKg,
        Problem = StoredJson.Text(problem),
        Answer = StoredJson.Text(answer),
        Choice = StoredJson.Text(choice),
        Versions = FormulaVersions.ForCharge(Used(data, choice).Select(m => m.Analysis?.Id).OfType<long>()),
        TotalCost = Money.Rounded((decimal)answer.TotalCost),
    };

    private static IEnumerable<MaterialView> Used(ChargeView data, ChargeChoice choice) =>
        choice.Target is ChargeTarget.Poured ? data.Materials.Concat(data.RouteMaterials).DistinctBy(m => m.Id) : data.Materials;

    private static IEnumerable<Finding> Clashes(ChargePlan answer)
    {
        if (answer.Conflicts.Count == 0) yield return new Finding("meltKg", answer.Status is PlanStatus.TimeLimit ? "plan.notFound" : "plan.massInfeasible");
        foreach (var clash in answer.Conflicts)
        {
            yield return clash.Bound is null
                ? new Finding("meltKg", "plan.massInfeasible")
                : new Finding($"limits.{clash.Quantity}", "plan.infeasible", clash.Quantity, clash.Bound, WindowQuantity.Told(clash.Quantity, clash.Limit ?? 0) + (clash.Bound == "min" ? -clash.HeldMargin : clash.HeldMargin));
        }
    }
}

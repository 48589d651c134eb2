using MeltShop.Charging.Choosing;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Charging.Tests.Support;

/// <summary>The plans to choose from of one generated yard, each against GLPK with the same wish.</summary>
/// <param name="Faults">What does not agree; empty where all does.</param>
/// <param name="Unjudged">Plans on which there is no second opinion, and why.</param>
internal sealed record ChoiceComparison(IReadOnlyList<string> Faults, IReadOnlyList<string> Unjudged)
{
    private const double DearerPercent = 3;

    /// <summary>What GLPK's tolerances are worth, as a share of the cost: planes in place of cones lie outside.</summary>
    private const double Blur = 1e-5;

    /// <summary>More safety is not sought.</summary>
    private const double MostDeviations = 4;

    /// <summary>Null where the yard is impossible.</summary>
    public static async Task<ChoiceComparison?> Of(int seed, bool withFewest, CancellationToken cancellation, bool pieces = false, double confidence = 50)
    {
        var problem = RandomYard.Charge(seed, pieces, confidence);
        var other = RandomYard.Charge(seed + 1);
        var wishes = new ChoiceWishes
        {
            MostDearerPercent = DearerPercent,
            Returns = [.. problem.Materials.Select(m => m.Code).Where(c => c.StartsWith("returns", StringComparison.Ordinal))],
            LastTimeKg = problem.Materials.Zip(other.Materials).ToDictionary(m => m.First.Code, m => m.Second.PricePerTonne < 600 ? Math.Abs(m.Second.PricePerTonne) : 0),
        };
        var choice = await Task.Run(() => PlanChoice.Of(problem, wishes, cancellation), cancellation);
        if (choice.Plans.Count == 0) return null;
        var most = choice.Cheapest.TotalCost + DearerPercent / 100 * Math.Abs(choice.Cheapest.TotalCost);
        var (faults, unjudged) = (new List<string>(), new List<string>());
        foreach (var plan in choice.Plans.Where(p => p.Kind != PlanKind.Cheapest && (withFewest || p.Kind != PlanKind.FewestMaterials)))
        {
            if (plan.Charge is null)
            {
                faults.Add(FormattableString.Invariant($"seed {seed}, {plan.Kind}: no charge, {plan.Status}"));
                continue;
            }

            try
            {
                await Compare(plan);
            }
            catch (GlpkGaveUpException gaveUp)
            {
                unjudged.Add($"seed {seed}, {plan.Kind}: {(gaveUp.Message == GlpkGaveUpException.Erred ? gaveUp.Message : "GLPK gave up")}");
            }
        }

        return new(faults, unjudged);

        async Task Compare(PlanToChoose plan)
        {
            var (mine, reference) = plan.Kind switch
            {
                PlanKind.MostReturns => (-Sum(plan, wishes.Returns.Contains), await Glpk.Least(problem, Returns(problem, wishes).Within(problem, most), cancellation)),
                PlanKind.AsLastTime => (Distance(plan, problem, wishes), await Glpk.Least(problem, LastTime(problem, wishes), cancellation)),
                PlanKind.FewestMaterials => (plan.Charge!.Lines.Count, await Glpk.Least(problem, Fewest(problem).Within(problem, most), cancellation)),
                _ when confidence > 50 => (Deviations(plan), await Greatest(plan, Deviations(plan), MostDeviations, pieces ? 1e-2 : 3e-4, level => Confident(problem, level), most, cancellation)),
                _ => (Room(plan), await Greatest(plan, Room(plan), 1, pieces ? 2e-3 : 3e-4, level => WithRoom(problem, level), most, cancellation)),
            };
            if (plan.Kind != PlanKind.AsLastTime && plan.ExtraCost > most - choice.Cheapest.TotalCost + 1e-6 * Math.Abs(most)) faults.Add(FormattableString.Invariant($"seed {seed}, {plan.Kind}: too dear"));
            if (reference is null && plan.Kind != PlanKind.Safest) GlpkGaveUpException.ThrowIfKept(problem, plan.Charge!.Lines);
            var room = plan.Kind == PlanKind.Safest ? 0 : plan.Kind == PlanKind.FewestMaterials ? 0.5 : 1e-6 * problem.MeltKg;
            if (reference is null || Math.Abs(mine - reference.Value) > room || !plan.Charge!.Holds)
                faults.Add(FormattableString.Invariant($"seed {seed}, {plan.Kind}: {mine:R}, GLPK {reference:R}"));
        }
    }

    private static GlpkWish Returns(ChargeProblem problem, ChoiceWishes wishes) => new([.. problem.Materials.Select(m => wishes.Returns.Contains(m.Code) ? -1.0 : 0)]);

    private static GlpkWish Fewest(ChargeProblem problem)
    {
        var n = problem.Materials.Count;
        return new([.. Enumerable.Range(0, 3 * n).Select(j => j < 2 * n ? 0.0 : 1)])
        {
            Rows = [.. problem.Materials.Select((m, j) => (InOrOut(m, j), "<=", 0.0))],
            Binary = [.. Enumerable.Range(2 * n, n)],
        };

        double[] InOrOut(ChargeMaterial material, int j)
        {
            var row = new double[3 * n];
            row[j] = 1;
            row[2 * n + j] = -(problem.MeltKg + problem.MeltToleranceKg) / Glpk.Liquid(material);
            return row;
        }
    }

    private static GlpkWish LastTime(ChargeProblem problem, ChoiceWishes wishes)
    {
        var (n, all) = (problem.Materials.Count, wishes.LastTimeKg.Values.Sum());
        return new([.. Enumerable.Range(0, 3 * n).Select(j => j < 2 * n ? 0.0 : 1)])
        {
            Rows = [.. problem.Materials.SelectMany((m, j) => new[] { (Moved(m, j, 1), ">=", 0.0), (Moved(m, j, -1), "<=", 0.0) })],
        };

        double[] Moved(ChargeMaterial material, int j, double distance)
        {
            var row = new double[3 * n];
            for (var i = 0; i < n; i++) row[i] = (i == j ? 1 : 0) - wishes.LastTimeKg.GetValueOrDefault(material.Code) / all;
            row[2 * n + j] = distance;
            return row;
        }
    }

    private static double Distance(PlanToChoose plan, ChargeProblem problem, ChoiceWishes wishes)
    {
        var (weighed, all) = (plan.Charge!.Lines.Sum(l => l.Kg), wishes.LastTimeKg.Values.Sum());
        return problem.Materials.Sum(m => Math.Abs(Sum(plan, m.Code.Equals) - wishes.LastTimeKg.GetValueOrDefault(m.Code) / all * weighed));
    }

    private static double Sum(PlanToChoose plan, Func<string, bool> which) => plan.Charge!.Lines.Where(l => which(l.Code)).Sum(l => l.Kg);

    private static double Room(PlanToChoose plan) => (plan.Safety!.RoomPercent ?? 100) / 100;

    private static double Deviations(PlanToChoose plan) =>
        plan.Safety!.ConfidencePercent is { } percent ? Math.Min(Normal.Quantile(percent / 100), MostDeviations) : MostDeviations;

    /// <summary>The level that the plan has, if it can be had within the price and a little more cannot; null otherwise.</summary>
    private static async Task<double?> Greatest(PlanToChoose plan, double level, double greatest, double more, Func<double, ChargeProblem> at, double most, CancellationToken cancellation)
    {
        var (asked, tooMuch) = (at(level - 1e-6), at(level + more));
        var here = await Glpk.LeastCost(asked, cancellation);
        if (here is null) GlpkGaveUpException.ThrowIfKept(asked, plan.Charge!.Lines);
        if (!(here <= most + 1e-6 * Math.Abs(most))) return null;
        if (level > greatest - 1e-5) return level;
        var farther = await Glpk.LeastCost(tooMuch, cancellation);
        // What GLPK calls impossible is not so where a plan keeps it; what that costs is the planner's own word.
        if (farther is null && ChargeOptimiser.Plan(tooMuch, cancellation) is { Status: PlanStatus.Optimal } found && KeptRows.Keeps(tooMuch, found.Lines)) farther = found.TotalCost;
        return farther is null || farther > most - (tooMuch.ConfidencePercent > 50 ? Blur * Math.Abs(most) : 0) ? level : null;
    }

    private static ChargeProblem Confident(ChargeProblem problem, double deviations) => problem with { ConfidencePercent = 100 * Normal.Cumulative(deviations) };

    private static ChargeProblem WithRoom(ChargeProblem problem, double room) => problem with
    {
        Limits = [.. problem.Limits.Select(l => l.Min == l.Max ? l : l with
        {
            Min = l.Min + room * Half(l, l.Min),
            Max = l.Max - room * Half(l, l.Max),
        })],
    };

    private static double Half(QuantityLimit limit, double? bound) => limit is { Min: { } min, Max: { } max } ? (max - min) / 2 : Math.Abs(bound ?? 0) / 10;
}

using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging.Tests.Support;

/// <summary>
/// What bounds on masses, shares and rooms of one generated yard are said to cost, against what a small move of each really costs, on both sides. The
/// yard gets kinds and a room that are a little too small for its plan, so that they bind.
/// </summary>
internal static class BoundComparison
{
    private static readonly string[] Kinds = ["returns", "steel", "pig", "cast scrap"];

    /// <returns>Number of bounds on each kind, and what does not agree.</returns>
    public static (IReadOnlyDictionary<MissKind, int> Compared, IReadOnlyList<string> Faults) Of(int seed, double confidence, CancellationToken cancellation)
    {
        var problem = Tightened(RandomYard.Charge(seed, confidence: confidence), new Random(seed), cancellation);
        var plan = ChargeOptimiser.Explained(problem, cancellation);
        var faults = new List<string>();
        foreach (var bound in plan.Bounds)
        {
            // The cost may bend within a step; where it does, a smaller one has to agree. In yard 174 a material of 0.04 g bends it after a 33,000,000th of the melt.
            var step = (confidence > 50 ? 1e-4 : 1e-6) * (bound.Kind is MissKind.MaterialPercent or MissKind.GroupPercent ? 100 : bound.Kind is MissKind.Volume ? bound.Bound : problem.MeltKg);
            double[] steps = confidence > 50 ? [step, step / 10, step / 100, step / 1000] : [step, step / 10, step / 100];
            var found = steps.Select(smaller => Fault(problem, plan, bound, smaller, cancellation)).TakeWhile(fault => fault is not null).ToList();
            if (found.Count == steps.Length) faults.Add($"seed {seed}, {bound.Kind} {bound.Name} {bound.Binding}: {found[^1]}");
        }

        return (plan.Bounds.CountBy(bound => bound.Kind).ToDictionary(), faults);
    }

    private static string? Fault(ChargeProblem problem, ChargePlan plan, BoundOutcome bound, double step, CancellationToken cancellation)
    {
        var (raised, lowered) = (Change(step), Change(-step));
        if (bound.RaisedCost is null != raised is null) return FormattableString.Invariant($"raised: {bound.RaisedCost} said, {raised} found");
        if (bound.LoweredCost is null != lowered is null) return FormattableString.Invariant($"lowered: {bound.LoweredCost} said, {lowered} found");
        return Differs(bound.RaisedCost, raised, lowered) || Differs(bound.LoweredCost, lowered, raised)
            ? FormattableString.Invariant($"said {bound.RaisedCost} and {bound.LoweredCost}, found {raised} and {lowered}") : null;

        // A bound below zero is no question that could be asked.
        double? Change(double by) => bound.Bound + by < 0 ? null : ChargeOptimiser.Plan(Moved(problem, bound, by), cancellation) is { Status: PlanStatus.Optimal } other ? (other.TotalCost - plan.TotalCost) / step : null;

        // Without scatter the cost is straight for a little way. With scatter it bends upwards, and the slope lies between the changes on both sides.
        bool Differs(double? said, double? found, double? opposite)
        {
            var slack = (problem.ConfidencePercent > 50 ? 2e-2 : 1e-3) * (1 + Math.Abs(said ?? 0));
            var least = problem.ConfidencePercent > 50 ? -(opposite ?? double.PositiveInfinity) : found;
            return said > found + slack || said < least - slack;
        }
    }

    private static ChargeProblem Tightened(ChargeProblem problem, Random random, CancellationToken cancellation)
    {
        var dense = problem with { Materials = [.. problem.Materials.Select(m => m with { BulkDensityTonnesPerM3 = 0.4 + 2.6 * random.NextDouble() })] };
        var plan = ChargeOptimiser.Plan(dense, cancellation);
        if (plan.Status != PlanStatus.Optimal) return dense;
        var groups = Kinds.Select(kind => (Kind: kind, Codes: dense.Materials.Select(m => m.Code).Where(c => c.StartsWith(kind, StringComparison.Ordinal)).ToList())).Where(g => g.Codes.Count > 0)
            .Select((g, i) => Group(g.Kind, g.Codes, plan.Lines.Where(l => g.Codes.Contains(l.Code)).Sum(l => l.Kg), plan.Lines.Sum(l => l.Kg), (i + random.Next(4)) % 4));
        var volume = plan.Lines.Sum(l => l.Kg / 1000 / dense.Materials.Single(m => m.Code == l.Code).BulkDensityTonnesPerM3!.Value);
        var tight = dense with { Groups = [.. groups], Volumes = random.Next(3) == 0 ? [] : [new VolumeLimit("furnace", volume * 0.995)] };
        return ChargeOptimiser.Plan(tight, cancellation).Status == PlanStatus.Optimal ? tight : dense;
    }

    /// <summary>A little less, or more, than the plan has of it, in kilograms or as a share.</summary>
    private static GroupLimit Group(string name, IReadOnlyList<string> codes, double kg, double totalKg, int kind) => new()
    {
        Name = name,
        Codes = codes,
        MaxKg = kind == 0 ? 0.99 * kg : null,
        MinKg = kind == 1 ? 1.01 * kg : 0,
        MaxPercent = kind == 2 ? 99 * kg / totalKg : 100,
        MinPercent = kind == 3 ? Math.Min(99, 101 * kg / totalKg) : 0, // a group may be all of the plan
    };

    private static ChargeProblem Moved(ChargeProblem problem, BoundOutcome bound, double by)
    {
        var (least, most) = (bound.Binding is BindingBound.Min or BindingBound.Both ? by : 0, bound.Binding is BindingBound.Max or BindingBound.Both ? by : 0);
        return bound.Kind switch
        {
            MissKind.LiquidKg => problem with { MeltKg = problem.MeltKg + least, MeltToleranceKg = problem.MeltToleranceKg + most - least },
            MissKind.Stock => Material(m => m with { AvailableKg = m.AvailableKg + by }),
            MissKind.MaterialKg => Material(m => m with { MinKg = m.MinKg + least, MaxKg = m.MaxKg + most }),
            MissKind.MaterialPercent => Material(m => m with { MinPercent = m.MinPercent + least, MaxPercent = m.MaxPercent + most }),
            MissKind.GroupKg => Group(g => g with { MinKg = g.MinKg + least, MaxKg = g.MaxKg + most }),
            MissKind.GroupPercent => Group(g => g with { MinPercent = g.MinPercent + least, MaxPercent = g.MaxPercent + most }),
            MissKind.Volume => problem with { Volumes = [.. problem.Volumes.Select(v => v.Name == bound.Name ? v with { MostM3 = v.MostM3 + by } : v)] },
            _ => throw new InvalidOperationException($"No plan sits on {bound.Kind}."),
        };

        ChargeProblem Material(Func<ChargeMaterial, ChargeMaterial> move) => problem with { Materials = [.. problem.Materials.Select(m => m.Code == bound.Name ? move(m) : m)] };

        ChargeProblem Group(Func<GroupLimit, GroupLimit> move) => problem with { Groups = [.. problem.Groups.Select(g => g.Name == bound.Name ? move(g) : g)] };
    }
}

using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Conflicts;

/// <summary>
/// Why a melt is impossible: a set of bounds that clash with the rows of mass, stock and share, of which none can be spared.
/// Deletion filter (J. W. Chinneck, "Feasibility and Infeasibility in Optimization", Springer 2008): leave out one bound after the other, and
/// for good where the rest is impossible still.
/// </summary>
internal static class ConflictFinder
{
    public static IReadOnlyList<Conflict> Find(MeltFormulation formulation, Budget budget)
    {
        if (IsImpossible(formulation, [], budget)) return [new("meltKg", null, formulation.Melt.WantedKg, ReachableMass.Nearest(formulation, budget))];
        var members = formulation.Bounds.ToList();
        foreach (var bound in formulation.Bounds)
        {
            var rest = members.Where(b => b != bound).ToList();
            if (IsImpossible(formulation, rest, budget)) members = rest;
        }

        return [.. members.Select(b => new Conflict(b.Limit.Quantity.Name, b.Side, b.Asked, NearestValue.Of(formulation, b, members.Where(o => o != b), budget)))];
    }

    /// <summary>Whether no plan keeps these bounds, cost apart. What could not be decided in time does not count as impossible.</summary>
    private static bool IsImpossible(MeltFormulation formulation, IEnumerable<LimitBound> bounds, Budget budget)
    {
        return Undecided.OrWithout(() => ProgramSolver.Solve(formulation.Program(bounds).Free(), budget)).Status == PlanStatus.Infeasible;
    }
}

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
    /// <returns>The set, and whether it is certain that none of it can be spared: a probe that came to no end leaves its bound in.</returns>
    public static (IReadOnlyList<Conflict> Conflicts, bool IsCertain) Find(MeltFormulation formulation, Budget budget)
    {
        var isCertain = true;
        if (IsImpossible(formulation, [], budget, ref isCertain)) return ([OfMasses(formulation, budget, ref isCertain)], isCertain);
        var members = formulation.Bounds.ToList();
        foreach (var bound in formulation.Bounds)
        {
            var rest = members.Where(b => b != bound).ToList();
            if (IsImpossible(formulation, rest, budget, ref isCertain)) members = rest;
        }

        return ([.. members.Select(b => new Conflict(b.Limit.Quantity.Name, b.Side, b.Asked, NearestValue.Of(formulation, b, members.Where(o => o != b), budget))
        {
            Margin = b.Limit.Margin, HeldMargin = b.Limit.HeldMargin,
        })], isCertain);
    }

    /// <summary>Impossible without any limit: the same filter over groups and rooms names those that the masses and shares clash with.</summary>
    private static Conflict OfMasses(MeltFormulation formulation, Budget budget, ref bool isCertain)
    {
        var melt = formulation.Melt;
        foreach (var group in melt.Groups)
        {
            var without = melt with { Groups = [.. melt.Groups.Where(g => g != group)] };
            if (IsImpossible(new(without), [], budget, ref isCertain)) melt = without;
        }

        foreach (var room in melt.Volumes)
        {
            var without = melt with { Volumes = [.. melt.Volumes.Where(v => v != room)] };
            if (IsImpossible(new(without), [], budget, ref isCertain)) melt = without;
        }

        return new("meltKg", null, melt.WantedKg, ReachableMass.Nearest(formulation, budget))
        {
            Groups = [.. melt.Groups.Select(g => g.Name)], Rooms = [.. melt.Volumes.Select(v => v.Name)],
        };
    }

    /// <summary>Whether no plan keeps these bounds, cost apart. What could not be decided in time does not count as impossible.</summary>
    private static bool IsImpossible(MeltFormulation formulation, IEnumerable<LimitBound> bounds, Budget budget, ref bool isCertain)
    {
        var solution = Undecided.OrWithout(() => Possibility.Of(formulation.Program(bounds), budget));
        isCertain &= solution.Status is PlanStatus.Infeasible || solution.Values.Length > 0;
        return solution.Status == PlanStatus.Infeasible;
    }
}

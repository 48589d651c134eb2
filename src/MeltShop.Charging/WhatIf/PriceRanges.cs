using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.WhatIf;

/// <summary>Prices of one material, all else the same, over which the cheapest plan stays as it is.</summary>
/// <param name="Code">The material.</param>
/// <param name="PricePerTonne">Its price now.</param>
/// <param name="Least">Below this price the plan would take more of it; null where it stays at any price below.</param>
/// <param name="Most">Above this price the plan would take less of it; null where it stays at any price above.</param>
public sealed record PriceRange(string Code, double PricePerTonne, double? Least, double? Most);

/// <summary>
/// How far prices may move before the plan does. Derivatives of the least cost for a little more and a little less of a material, each by
/// itself: where the plan is degenerate the two sides are right each, and where several plans cost the same the range ends at today's price.
/// </summary>
public static class PriceRanges
{
    /// <summary>The ranges in the order of the materials. Empty where there is no plan, or with whole pieces, where there are no derivatives; a material whose range could not be decided is left out.</summary>
    /// <inheritdoc cref="ChargeOptimiser.Plan" path="/exception"/>
    public static IReadOnlyList<PriceRange> Of(ChargeProblem problem, CancellationToken cancellation = default)
    {
        var melt = ChargeOptimiser.MeltOf(problem);
        return MeltPlanner.InTurn(melt, Of, cancellation);
    }

    private static IReadOnlyList<PriceRange> Of(MeltFormulation formulation, Budget budget)
    {
        var program = formulation.Whole();
        if (program.HasWholeColumns) return [];
        var solution = Undecided.OrWithout(() => ProgramSolver.Solve(program, budget));
        if (!solution.IsOptimal) return [];
        using var tangent = new TangentProgram(solution, new ActiveSet(solution));
        return [.. Enumerable.Range(0, formulation.Columns.Count).Select(j => Range(formulation, tangent, j, budget)).OfType<PriceRange>()];
    }

    private static PriceRange? Range(MeltFormulation formulation, TangentProgram tangent, int column, Budget budget)
    {
        var material = formulation.Melt.Columns[column];
        try
        {
            var (more, less) = (tangent.Forcing(column, budget), tangent.Forcing(column, budget, sign: -1));
            return budget.IsSpent ? null : new(material.Name, 1000 * material.PricePerKg, Price(-more), Price(less));
        }
        catch (UndecidedException)
        {
            return null;
        }

        double? Price(double? rate) => 1000 * (material.PricePerKg + rate * formulation.CostScale / formulation.Melt.UnitKg(material));
    }
}

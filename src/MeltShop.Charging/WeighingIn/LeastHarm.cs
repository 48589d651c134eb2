using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.WeighingIn;

/// <summary>
/// What to do when the limits cannot all be kept: the charge that misses them by the least in all. A miss counts by its size: one percent of the melt
/// in mass, five points of a share, half a window (a tenth of a single bound) times the limit's weight are the same harm, and as bad as a charge
/// lost. So of charges that no laboratory can tell apart the cheapest is taken, and nothing is bought for a last digit.
/// </summary>
internal static class LeastHarm
{
    /// <summary>What is given away for money at most: a twentieth of half a window, some 0.01 % of silicon (common practice, no source).</summary>
    private const double Untold = 0.05;

    /// <summary>The charge with what it misses; null where none was found.</summary>
    public static (ChargeEvaluation? Charge, SearchEnd End) Find(MeltFormulation formulation, Budget budget)
    {
        // First the harm alone. Its charge says how much money one is; with that both are sought together, near the least harm.
        var elastic = ElasticProgram.Of(formulation);
        var solution = Undecided.OrWithout(() => InOrder.Solve(elastic, least => WithMoney(elastic, formulation, least), budget));
        return (solution.Values.Length == 0 ? null : ChargeCheck.Of(new MeltResult(formulation.Melt, formulation.Kilograms(solution.Values, elastic.Columns))), solution.End);
    }

    private static LinearProgram WithMoney(LinearProgram elastic, MeltFormulation formulation, double[] least)
    {
        var money = formulation.Columns.Select((c, j) => Math.Abs(c.Cost * least[j])).Sum();
        var ofCharge = money > 0 ? money : 1;
        return elastic.Priced([.. elastic.Columns.Select((c, j) => c.Cost + (j < formulation.Columns.Count ? formulation.Columns[j].Cost / ofCharge : 0))])
            .With(InOrder.Held(elastic, least, Untold));
    }
}

using MeltShop.Charging.Formulation;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Choosing;

/// <summary>The plan with the greatest mass of returns.</summary>
internal static class MostReturns
{
    public static Solution Find(MeltFormulation formulation, IReadOnlyList<string> returns, Dearness dearness, Budget budget) =>
        InOrder.Solve(dearness.Program(formulation), formulation.Weighed(c => returns.Contains(c.Name) ? -1 : 0), budget);
}

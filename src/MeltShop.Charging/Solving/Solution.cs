using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>What a solve came back with.</summary>
/// <param name="Status">How it ended.</param>
/// <param name="Values">Values of the columns; empty where there are none.</param>
/// <param name="Rows">The rows that the values were found with, planes that stand for scatter included.</param>
/// <param name="Duals">Change of the objective for +1 on each row's right-hand side; empty for whole pieces.</param>
/// <param name="ReducedCosts">Change of the objective for +1 on each column; empty for whole pieces.</param>
internal sealed record Solution(PlanStatus Status, double[] Values, IReadOnlyList<Row> Rows, double[] Duals, double[] ReducedCosts)
{
    public bool IsOptimal => Status == PlanStatus.Optimal;

    public static Solution Without(PlanStatus status) => new(status, [], [], [], []);
}

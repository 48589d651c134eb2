using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Tests.Solving;

/// <summary>Two objectives in turn.</summary>
public class InOrderTests
{
    [Fact]
    public void Second_ThatCannotBeDecided_LeavesWhatTheFirstFoundWithoutProof()
    {
        // No solver can decide with a cost that is no number.
        var solution = InOrder.Solve(Of(cost: 1), _ => Of(cost: double.NaN), new(TimeSpan.FromMinutes(5), TestContext.Current.CancellationToken));

        Assert.Equal((PlanStatus.TimeLimit, SearchEnd.Undecided), (solution.Status, solution.End));
        Assert.Equal(1, Assert.Single(solution.Values), 1e-9);
    }

    private static LinearProgram Of(double cost) => new([new("x", cost, 1, 10)], []);
}

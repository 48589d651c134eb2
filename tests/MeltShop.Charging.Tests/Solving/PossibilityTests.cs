using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Tests.Solving;

/// <summary>a + b = 1 within a cone, √(a² + b²) ≤ 0.6: half and half comes nearest to it, at 0.7071.</summary>
public class PossibilityTests
{
    private static readonly LinearProgram Impossible = new(
        [new("a", 1, 0, 1), new("b", 2, 0, 1)],
        [new("sum", [1, 1], 1, 1), new("cone", [0, 0], double.NegativeInfinity, 0.6) { Scatter = [1, 1] }]);

    [Fact]
    public void Nearest_MissesTheConeLeast()
    {
        var nearest = Possibility.Nearest(Impossible, Budget());

        Assert.Equal(PlanStatus.Optimal, nearest.Status);
        Assert.Equal(0.5, nearest.Values[0], 1e-6);
        Assert.Equal(0.5, nearest.Values[1], 1e-6);
        Assert.Equal(0.1071068, nearest.Values[2], 1e-7); // √½ - 0.6
        Assert.Equal(PlanStatus.Infeasible, Possibility.Of(Impossible, Budget()).Status);
    }

    [Fact]
    public void Nearest_HasThePlaneThatLeavesNothing()
    {
        // Any other plane leaves something: that at a alone is a ≤ 0.6.
        Assert.Equal(PlanStatus.Infeasible, ProgramSolver.Solve(WithPlaneAt(Possibility.Nearest(Impossible, Budget()).Values[..2]), Budget()).Status);
        Assert.Equal(PlanStatus.Optimal, ProgramSolver.Solve(WithPlaneAt([1, 0]), Budget()).Status);
    }

    private static LinearProgram WithPlaneAt(double[] values) => new(Impossible.Columns, [Impossible.Rows[0], .. ProgramSolver.Planes(Impossible.Rows, values, 0)]);

    private static Budget Budget() => new(TimeSpan.FromMinutes(5), TestContext.Current.CancellationToken);
}

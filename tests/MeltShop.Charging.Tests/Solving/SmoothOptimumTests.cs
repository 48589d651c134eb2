using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Charging.Tests.Solving;

/// <summary>The short way to the optimum under confidence against the long one, which knows no derivative.</summary>
public class SmoothOptimumTests
{
    private static Budget Time => new(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken);

    // In all of these the scatter binds; planes alone came to no end in those of 290 and 353.
    [Theory]
    [InlineData(290)]
    [InlineData(332)]
    [InlineData(334)]
    [InlineData(353)]
    [InlineData(426)]
    [InlineData(449)]
    public void ConfidentYard_FoundByNewton_CostsWhatSplitConesFind(int seed)
    {
        var program = ProgramOf(RandomYard.Charge(seed, confidence: 95));
        var found = ProgramSolver.Continuous(program, Time);
        var start = ProgramSolver.Continuous(program with { Rows = [.. program.Rows.Select(r => r with { Scatter = null })] }, Time);
        var split = SplitCones.Solve(program, start.Values, Time);

        Assert.True(found.IsOptimal && split.IsOptimal);
        Assert.Equal(program.Cost(split.Values[..program.Columns.Count]), program.Cost(found.Values), 1e-7);
        Assert.All(program.Rows, r => Assert.True(r.Violation(found.Values) <= ProgramSolver.Tolerance));

        // A plane for each cone that binds and no column more than was asked for: that is what makes the reports quick.
        Assert.Equal(program.Columns.Count, found.Solved.Columns.Count);
        var binding = program.Rows.Count(r => r.Scatter is not null && r.Violation(found.Values) >= -ProgramSolver.Tolerance);
        Assert.NotEqual(0, binding);
        Assert.Equal(program.Rows.Count + binding, found.Solved.Rows.Count);
        Assert.True(found.PricesAreUnique);
    }

    // The least of 2x + y where 3x + 2y − √(x² + 2.25·y²) is 1 or more. By Lagrange, with r for the root: 2 = μ·(3 − x/r), 1 = μ·(2 − 2.25·y/r).
    [Fact]
    public void TwoColumns_OnOneCone_AreWhereLagrangeHasThem()
    {
        var row = new Row("cone", [3, 2], 1, double.PositiveInfinity) { Scatter = [1, 1.5] };
        var program = new LinearProgram([new("x", 2, 0, 10), new("y", 1, 0, 10)], [row]);
        var found = ProgramSolver.Continuous(program, Time);

        var (x, y) = (found.Values[0], found.Values[1]);
        var size = Math.Sqrt(x * x + 2.25 * y * y);
        Assert.Equal(1, 3 * x + 2 * y - size, 1e-9);
        Assert.True(x > 0 && y > 0, $"x {x}, y {y}");
        var price = found.Duals[^1];
        Assert.Equal(2, price * (3 - x / size), 1e-8);
        Assert.Equal(1, price * (2 - 2.25 * y / size), 1e-8);
        Assert.True(found.PricesAreUnique);
    }

    [Fact]
    public void Guess_WithAColumnThatShouldComeIn_IsNotTaken()
    {
        // Held at zero, y would make the charge cheaper: a point that is not the cheapest must not be called so.
        var row = new Row("cone", [3, 2], 1, double.PositiveInfinity) { Scatter = [1, 1.5] };
        var program = new LinearProgram([new("x", 2, 0, 10), new("y", 1, 0, 10)], [row]);
        var guess = new Solution(PlanStatus.Optimal, program, [0.4, 0], [1], [0, 0]);

        Assert.Null(SmoothOptimum.Near(program, guess));
    }

    private static LinearProgram ProgramOf(ChargeProblem problem) => new MeltFormulation(ChargeOptimiser.MeltOf(problem)).Whole();
}

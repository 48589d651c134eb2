using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Charging.Tests.Solving;

/// <summary>The short way to the optimum under confidence against the long one, which knows no derivative.</summary>
public class SmoothOptimumTests
{
    private static Budget Time => new(TimeSpan.FromMinutes(5), TestContext.Current.CancellationToken);

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
        var split = SplitCones.Solve(program, start.Values, Time, _ => null);

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

    // Planes of all directions creep in these, and what they end with misses the cones by a billionth: in money up to a hundred-thousandth, in prices a quarter.
    [Theory]
    [InlineData(8, 90)]
    [InlineData(124, 90)]
    [InlineData(160, 99)]
    [InlineData(178, 99)]
    [InlineData(54, 90)]
    public void ConfidentYard_WherePlanesCreep_EndsOnTheConesThemselves(int seed, double confidence)
    {
        var program = ProgramOf(RandomYard.Charge(seed, confidence: confidence));
        var found = ProgramSolver.Continuous(program, Time);

        Assert.True(found.IsOptimal);
        Assert.Equal(program.Columns.Count, found.Solved.Columns.Count);
        Assert.All(program.Rows, r => Assert.True(r.Violation(found.Values) <= 1e-12));

        // Planes leave out nothing that is possible: what is cheapest with them costs no more than what is cheapest without.
        var planes = ProgramSolver.Continuous(new(program.Columns, [.. found.Solved.Rows.Select(r => r with { Scatter = null })]), Time);
        Assert.Equal(program.Cost(planes.Values), program.Cost(found.Values), 1e-9);
    }

    // A column that would pay, and a row that keeps it out: it stays at its own bound of 0 and the row at its, so that only both together are worth something.
    [Fact]
    public void Row_ThatOnlyAColumnOnItsBoundCouldMove_DoesNotHinder()
    {
        var cone = new Row("cone", [3, 2, 0], 1, double.PositiveInfinity) { Scatter = [1, 1.5, 0] };
        var none = new Row("none of it", [0, 0, 1], double.NegativeInfinity, 0);
        var program = new LinearProgram([new("x", 2, 0, 10), new("y", 1, 0, 10), new("z", -1, 0, 10)], [cone, none]);
        var alone = ProgramSolver.Continuous(new LinearProgram([.. program.Columns.Take(2)], [cone with { Coefficients = [3, 2], Scatter = [1, 1.5] }]), Time);
        var guess = new Solution(PlanStatus.Optimal, program, [alone.Values[0] - 1e-4, alone.Values[1] - 1e-4, 0], [alone.Duals[^1], -1], [0, 0, 0]);
        var found = SmoothOptimum.Near(program, guess, Time)!;

        Assert.Equal(alone.Values[0], found.Values[0], 1e-9);
        Assert.Equal(alone.Values[1], found.Values[1], 1e-9);
        Assert.Equal(0, found.Values[2]);
        Assert.False(found.PricesAreUnique);
        Assert.Equal(-1, found.Duals[1] + found.ReducedCosts[2], 1e-9);
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

    // It took 11 rounds and more in these while a wrong guess was dropped: now it is mended, and planes touch the cones where it led.
    [Theory]
    [InlineData(625, 99)]
    [InlineData(713, 99)]
    [InlineData(3477, 99)]
    [InlineData(2363, 95)]
    public void ConfidentYard_WhosePlanesGuessWrongAtFirst_TakesFewRounds(int seed, double confidence)
    {
        var found = ProgramSolver.Continuous(ProgramOf(RandomYard.Charge(seed, confidence: confidence)), Time);

        Assert.True(found.IsOptimal);
        Assert.InRange(found.Rounds, 1, 9);
    }

    [Fact]
    public void Program_WithoutScatter_TakesOneRound()
    {
        Assert.Equal(1, ProgramSolver.Continuous(ProgramOf(RandomYard.Charge(625)), Time).Rounds);
    }

    [Fact]
    public void Guess_WithAColumnThatShouldComeIn_IsMended()
    {
        // Held at zero, y would make the charge cheaper: a point that is not the cheapest must not be called so.
        var program = new LinearProgram([new("x", 2, 0, 10), new("y", 1, 0, 10)], [Cone]);
        var guess = new Solution(PlanStatus.Optimal, program, [0.4, 0], [1], [0, 0]);
        var found = SmoothOptimum.Near(program, guess, Time)!;

        Assert.Equal(ProgramSolver.Continuous(program, Time).Values[0], found.Values[0], 1e-9);
        Assert.True(found.Values[1] > 0);
    }

    [Fact]
    public void Guess_WithAColumnThatShouldGo_IsMended()
    {
        // Without its bound of zero, less than none of y would be cheapest.
        var program = new LinearProgram([new("x", 2, 0, 10), new("y", 2.3, 0, 10)], [Cone]);
        var guess = new Solution(PlanStatus.Optimal, program, [0.4, 0.1], [1], [0, 0]);
        var found = SmoothOptimum.Near(program, guess, Time)!;

        Assert.Equal(0.5, found.Values[0], 1e-9);
        Assert.Equal(0, found.Values[1]);
        Assert.Equal(1, found.Duals[^1], 1e-9);
    }

    [Fact]
    public void Guess_WithoutARowThatHolds_IsMended()
    {
        // The cone alone is cheapest with less of x than the other row wants.
        var program = new LinearProgram([new("x", 2, 0, 10), new("y", 1, 0, 10)], [Cone, new("x alone", [1, 0], 0.45, double.PositiveInfinity)]);
        var alone = ProgramSolver.Continuous(new LinearProgram(program.Columns, [Cone]), Time);
        var found = SmoothOptimum.Near(program, new(PlanStatus.Optimal, program, alone.Values, [alone.Duals[^1], 0], [0, 0]), Time)!;

        Assert.True(alone.Values[0] < 0.45, $"x {alone.Values[0]}");
        Assert.Equal(0.45, found.Values[0], 1e-9);
        Assert.Equal(ProgramSolver.Continuous(program, Time).Values[1], found.Values[1], 1e-9);
    }

    [Fact]
    public void Guess_ThatHoldsARowWhichCostsNothing_IsMended()
    {
        // The same row as an upper bound has no price: the cone is cheapest with less of x.
        var program = new LinearProgram([new("x", 2, 0, 10), new("y", 1, 0, 10)], [Cone, new("x alone", [1, 0], double.NegativeInfinity, 0.45)]);
        var alone = ProgramSolver.Continuous(new LinearProgram(program.Columns, [Cone]), Time);
        var found = SmoothOptimum.Near(program, new(PlanStatus.Optimal, program, [0.45, 0.05], [1, 0], [0, 0]), Time)!;

        Assert.Equal(alone.Values[0], found.Values[0], 1e-9);
        Assert.Equal(0, found.Duals[1]);
    }

    // z would come in, and only the other row keeps it at its bound: lowered, that row leaves nothing possible, which its price does not say.
    [Fact]
    public void Column_ThatARowHoldsAtItsBound_LeavesPricesOpen()
    {
        var program = new LinearProgram([new("x", 2, 0, 10), new("y", 1, 0, 10), new("z", -1, 0, 10)],
            [new("cone", [3, 2, 0], 1, double.PositiveInfinity) { Scatter = [1, 1.5, 0] }, new("none of it", [0, 0, 0.05], double.NegativeInfinity, 0)]);
        var alone = ProgramSolver.Continuous(new LinearProgram([.. program.Columns.Take(2)], [Cone]), Time);
        var found = SmoothOptimum.Near(program, new(PlanStatus.Optimal, program, [.. alone.Values, 1e-8], [alone.Duals[^1], -20], [0, 0, 0]), Time)!;

        Assert.Equal(0, found.Values[2], 1e-12);
        Assert.Equal(-20, found.Duals[1], 1e-9);
        Assert.False(found.PricesAreUnique);
    }

    [Fact]
    public void Guess_WithoutAnyRoom_IsNotTaken()
    {
        // Half of x is scatter: it takes 2 of it, and there is 1.
        var program = new LinearProgram([new("x", 2, 0, 1)], [new("cone", [1], 1, double.PositiveInfinity) { Scatter = [0.5] }]);

        Assert.Null(SmoothOptimum.Near(program, new(PlanStatus.Optimal, program, [0.9], [2], [0]), Time));
    }

    private static Row Cone => new("cone", [3, 2], 1, double.PositiveInfinity) { Scatter = [1, 1.5] };

    private static LinearProgram ProgramOf(ChargeProblem problem) => new MeltFormulation(ChargeOptimiser.MeltOf(problem)).Whole();
}

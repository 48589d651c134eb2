using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Tests.Solving;

/// <summary>Which rows hold a point, and the step from it that keeps them, by pencil.</summary>
public class HeldRowsTests
{
    // At x = 1.5, y = 4 the scatter √((2x)² + y²) is 5, its slope (1.2, 0.8), and five times its second derivatives are 2.56, −0.96 and 0.36.
    private static double[] At => [1.5, 4];

    // 2.2·x + 1.8·y less its scatter is 5.5, and one more for each of x and y.
    private static Row Lower(double least) => new("lower", [2.2, 1.8], least, double.PositiveInfinity) { Scatter = [2, 1] };

    // −0.2·x + 0.2·y and its scatter are 5.5, and one more for each of x and y.
    private static Row Upper(double most) => new("upper", [-0.2, 0.2], double.NegativeInfinity, most) { Scatter = [2, 1] };

    [Fact]
    public void Step_OnALowerBound_GoesWhereCostAndPriceOfTheBoundAreEqual()
    {
        // Half of it is short. With x + 1 and y − 0.5: 2.56 + 0.48 − 4.04 = −1, and −0.96 − 0.18 − 4.04 = −5.18.
        var held = Held([1, 5.18], Lower(6), 5);
        var (moves, prices) = held.Step(At, held.Multipliers)!.Value;

        AssertNear([1, -0.5], moves);
        AssertNear([4.04], prices);
    }

    [Fact]
    public void Step_OnAnUpperBound_GoesWhereCostAndPriceOfTheBoundAreEqual()
    {
        // Half of it is over. With x − 1 and y + 0.5: −2.56 − 0.48 + 2 = −1.04, and 0.96 + 0.18 + 2 = 3.14.
        var held = Held([1.04, -3.14], Upper(5), -5);
        var (moves, prices) = held.Step(At, held.Multipliers)!.Value;

        AssertNear([-1, 0.5], moves);
        AssertNear([-2], prices);
    }

    [Theory]
    [InlineData(5e-10, 1)]
    [InlineData(5e-9, 0)]
    public void Cone_InsideByWhatASolverLeavesOver_Holds(double inside, int rows)
    {
        Assert.Equal(rows, Held([1, 1], Lower(5.5 - inside), 1).All.Count);
        Assert.Equal(rows, Held([1, 1], Upper(5.5 + inside), 1).All.Count);
    }

    [Fact]
    public void Rows_ThatSayTheSame_LeaveTheDearestOne()
    {
        // x is at 1 by two rows, of which the dearer one says it twice as large; y at 1 by a row in small units; z is on its own bound, which a row says again.
        Row[] rows =
        [
            new("x", [1, 0, 0], 1, double.PositiveInfinity), new("2x", [2, 0, 0], 2, double.PositiveInfinity), new("y", [0, 1e-5, 0], double.NegativeInfinity, 1e-5),
            new("z", [0, 0, 1], double.NegativeInfinity, 0), new("far", [1, 1, 0], double.NegativeInfinity, 9),
        ];
        var held = new HeldRows(new(Columns(1, 1, 1), rows), new(PlanStatus.Optimal, new(Columns(1, 1, 1), rows), [1, 1, 0], [0.1, 0.7, -0.3, -1, 0], [0, 0, 0]));

        Assert.Equal(["x", "2x", "y", "z"], held.All.Select(r => r.Row.Name));
        Assert.Equal(["2x", "y"], held.Rows.Select(r => r.Row.Name));
        Assert.Equal([0.7, -0.3], held.Multipliers);
        Assert.Equal([(true, false), (false, true)], held.Rows.Select(r => (r.Least, r.Most)));
        Assert.Equal([0, 1], held.Free);
        Assert.Equal([(2, true, false)], held.Bounds);
    }

    [Fact]
    public void Step_OfWhatNoRowHolds_CannotBeTold()
    {
        Row[] one = [new("x", [1, 0], 1, double.PositiveInfinity)];

        Assert.Null(Step([1], [])); // nothing is held
        Assert.Null(Step([1, 1], one)); // y is not
        Assert.Null(Step([1, 1], [one[0], new("y", [0, 1e-20], 1e-20, double.PositiveInfinity)])); // or by rounding only
        Assert.Equal((0, 0), Step([], []) is var (moves, prices) ? (moves.Length, prices.Length) : (-1, -1)); // where nothing is free there is nothing to tell
    }

    [Fact]
    public void Step_InSmallUnits_IsTold()
    {
        var (moves, prices) = Step([3], [new("x", [1e-10], 2e-10, double.PositiveInfinity)])!.Value; // from 1 to 2, at 3 for each

        AssertNear([1], moves);
        AssertNear([3], [.. prices.Select(p => p * 1e-10)]);
    }

    private static (double[] Moves, double[] Multipliers)? Step(double[] costs, Row[] rows)
    {
        double[] ones = [.. costs.Select(_ => 1.0)];
        var program = new LinearProgram(Columns(costs), rows);
        var held = new HeldRows(program, new(PlanStatus.Optimal, program, ones, [.. rows.Select(_ => 1.0)], [.. costs.Select(_ => 0.0)]));
        return held.Step(ones, held.Multipliers);
    }

    /// <summary>A cone whose price two planes share.</summary>
    private static HeldRows Held(double[] costs, Row cone, double price)
    {
        var program = new LinearProgram(Columns(costs), [cone]);
        var solved = program with { Rows = [cone, cone.Tangent([1, 1], "plane 1"), cone.Tangent([1, 9], "plane 2")] };
        return new(program, new(PlanStatus.Optimal, solved, At, [0, 0.4 * price, 0.6 * price], [0, 0]));
    }

    private static Column[] Columns(params double[] costs) => [.. costs.Select((c, j) => new Column($"{j}", c, 0, 10))];

    private static void AssertNear(double[] expected, double[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        Assert.All(expected.Zip(actual), n => Assert.Equal(n.First, n.Second, 1e-9));
    }
}

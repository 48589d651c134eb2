using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Tests.Solving;

/// <summary>The next guess of what holds an optimum, where one led to a wrong point, by pencil: x and y from 0 to 10, both 1 by a row of its own.</summary>
public class MendedRowsTests
{
    private static readonly Row X = new("x", [1, 0], 1, double.PositiveInfinity), Y = new("y", [0, 1], 1, double.PositiveInfinity);

    [Theory]
    [InlineData(1e-8, true, false, false)]
    [InlineData(-1e-8, true, false, true)]
    [InlineData(-5e-10, true, false, false)] // what solving leaves over
    [InlineData(1e-8, false, true, true)]
    [InlineData(5e-10, false, true, false)]
    [InlineData(-1e-8, false, true, false)]
    [InlineData(1e-8, true, true, false)]
    [InlineData(-1e-8, true, true, false)]
    public void Price_OfABound_IsWrongWhereRaisingItWouldPay(double price, bool isLeast, bool isMost, bool isWrong) => Assert.Equal(isWrong, HeldRows.IsWrong(price, isLeast, isMost));

    /// <summary>At (1.5, 4) the scatter √((2x)² + y²) is 5 and its slope (1.2, 0.8): the row has one more for each of x and y, and costs 5; the other has 2 for y, and costs 0.5.</summary>
    [Fact]
    public void ReducedCosts_OfACone_AreWithItsSlopeThere()
    {
        Row cone = new("cone", [2.2, 1.8], 5.5, double.PositiveInfinity) { Scatter = [2, 1] }, most = new("most", [0, 2], double.NegativeInfinity, 8);

        Assert.Equal([-4, -0.82], Held([1, 5.18], [cone, most], [5, 0.5], [1.5, 4]).ReducedCosts([1.5, 4], [5, 0.5]).Select(cost => Math.Round(cost, 9)));
    }

    [Fact]
    public void Guess_WithNothingWrong_HasNoNext() => Assert.Null(Held([2, 3], [X, Y], [2, 3]).Mended([1, 1], [2, 3]));

    /// <summary>x and y together are to be 0.5 at most, and y 0.8: the first is missed by 1.5. What it costs nobody knows yet.</summary>
    [Fact]
    public void Row_ThatIsMissedMost_IsHeldBesideTheOthers()
    {
        Row sum = new("sum", [1, 1], double.NegativeInfinity, 0.5), little = new("little", [0, 1], double.NegativeInfinity, 0.8);
        var next = Held([2, 3], [X, sum, little], [2, 0, 0], [1, 4]).Mended([1, 1], [2])!;

        Assert.Equal([("x", true, false), ("sum", false, true)], next.Rows.Select(r => (r.Row.Name, r.Least, r.Most)));
        Assert.Equal([2, 0], next.Multipliers);
    }

    [Fact]
    public void Row_ThatIsMissedFromBelow_IsHeldThere()
    {
        var next = Held([2, 3], [X, new("sum", [1, 1], 3, 9)], [2, 0], [1, 4]).Mended([1, 1], [2])!;

        Assert.Equal([("x", true, false), ("sum", true, false)], next.Rows.Select(r => (r.Row.Name, r.Least, r.Most)));
    }

    /// <summary>x is 1 by a row; one that says twice as much for 2x says nothing that goes beside it.</summary>
    [Fact]
    public void Row_ThatIsMissedAndSaysNothingNew_IsNoGuess() =>
        Assert.Null(Held([2, 3], [X, new("2x", [2, 0], double.NegativeInfinity, 1.5)], [2, 0], [1, 4]).Mended([1, 4], [2]));

    [Theory]
    [InlineData(11, 12, 1, false)]
    [InlineData(13, 12, 0, false)]
    [InlineData(-3, 12, 0, true)]
    [InlineData(-1, 12, 1, false)]
    public void Column_ThatIsOutsideMost_IsHeldOnItsBound(double x, double y, int column, bool isLeast)
    {
        var next = Held([2, 3], [], [], [5, 5]).Mended([x, y], [])!;

        Assert.Equal([(column, isLeast, !isLeast)], next.Bounds);
        Assert.Equal([1 - column], next.Free);
    }

    /// <summary>Raising either would pay; the other one may be wrong for its sake only.</summary>
    [Theory]
    [InlineData(-0.5, -0.7, "x")]
    [InlineData(-0.9, -0.7, "y")]
    [InlineData(-0.5, 0.7, "y")]
    public void Row_WithTheWorstPrice_IsLetGoAlone(double x, double y, string left)
    {
        var held = Held([2, 3], [X, Y], [x, y]);
        var next = held.Mended([1, 1], held.Multipliers)!;

        Assert.Equal(left, Assert.Single(next.Rows).Row.Name);
        Assert.Equal([0, 1], next.Free);
    }

    /// <summary>Both lie at 0, where one more of x pays by 2 and one more of y by 3.</summary>
    [Fact]
    public void Column_ThatPaysMost_IsLetGoAlone()
    {
        var held = Held([-2, -3], [], [], [0, 0]);
        var next = held.Mended([0, 0], [])!;

        Assert.Equal([0, 1], held.Bounds.Select(b => b.Column));
        Assert.Equal([1], next.Free);
        Assert.Equal([(0, true, false)], next.Bounds);
    }

    /// <summary>A row with a wrong price goes before a column does, and something missed before either.</summary>
    [Fact]
    public void Mending_OfSeveralThings_DoesOneAtATime()
    {
        Row sum = new("sum", [1, 1], double.NegativeInfinity, 0.5);

        Assert.Equal(["x", "sum"], Held([2, -3], [X, sum], [-2, 0], [1, 4]).Mended([1, 4], [-2])!.All.Select(r => r.Row.Name));
        var without = Held([2, -3], [X], [-2], [1, 0]).Mended([1, 0], [-2])!;
        Assert.Empty(without.Rows);
        Assert.Equal([(1, true, false)], without.Bounds);
    }

    /// <summary>Held where these values sit on bounds, with these prices of the rows.</summary>
    private static HeldRows Held(double[] costs, Row[] rows, double[] prices, double[]? at = null)
    {
        var program = new LinearProgram([.. costs.Select((c, j) => new Column($"{j}", c, 0, 10))], rows);
        return new(program, new(PlanStatus.Optimal, program, at ?? [1, 1], prices, [0, 0]));
    }
}

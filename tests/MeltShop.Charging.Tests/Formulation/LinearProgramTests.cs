using MeltShop.Charging.Formulation;

namespace MeltShop.Charging.Tests.Formulation;

/// <summary>The sums of a program, each worked by pencil at x = 3, y = 4.</summary>
public class LinearProgramTests
{
    private static double[] At => [3, 4];

    // 2x + y = 10, and a scatter of √((1·3)² + (1·4)²) = 5. Made anew each time: a fault that writes into a row is seen where it is.
    private static Row Linear => new("row", [2, 1], 8, 11);

    private static Row Lower => Linear with { Most = double.PositiveInfinity, Scatter = [1, 1] };

    private static Row Upper => Linear with { Least = double.NegativeInfinity, Scatter = [1, 1] };

    [Fact]
    public void Row_AtAPoint_IsMissedByWhatIsBeyondItsBound()
    {
        Assert.Equal((10, 0), (Linear.Activity(At), Linear.ScatterAt(At)));
        Assert.Equal(-1, Linear.Violation(At)); // 10 is one below 11 and two above 8
        Assert.Equal(2, (Linear with { Least = 12, Most = 20 }).Violation(At));
        Assert.Equal(3, (Linear with { Least = 0, Most = 7 }).Violation(At));
    }

    [Fact]
    public void Scatter_BeforeEitherBound_TakesRoom()
    {
        Assert.Equal(5, Lower.ScatterAt(At));
        Assert.Equal(3, Lower.Violation(At)); // 10 − 5 is three below 8
        Assert.Equal(4, Upper.Violation(At)); // 10 + 5 is four above 11
    }

    [Fact]
    public void Tangent_TouchesTheConeWhereItIsTaken_AndLeavesRoomElsewhere()
    {
        foreach (var cone in new[] { Lower, Upper })
        {
            var plane = cone.Tangent(At, "plane");

            Assert.Null(plane.Scatter);
            Assert.Same(cone, plane.PlaneOf);
            Assert.Equal(cone.Violation(At), plane.Violation(At), 1e-12);
            Assert.True(plane.Violation([4, 3]) < cone.Violation([4, 3]));
            Assert.True(plane.Violation([1, 0]) < cone.Violation([1, 0]));
        }

        Assert.Equal([1.4, 0.2], Lower.Tangent(At, "plane").Coefficients.Select(c => Math.Round(c, 12)));
        Assert.Equal([2.6, 1.8], Upper.Tangent(At, "plane").Coefficients.Select(c => Math.Round(c, 12)));
    }

    [Fact]
    public void Column_ThatComesLater_IsInTheRowsThatAreNamedOnly()
    {
        var (first, second) = (Linear, Lower);
        var program = new LinearProgram([new("x", 5, 0, 1), new("y", 7, 0, 1, Whole: true)], [first, second]).With(new Column("z", 1, 0, 9), (1, -2));

        Assert.Equal(["x", "y", "z"], program.Columns.Select(c => c.Name));
        Assert.Equal([2, 1, 0], program.Rows[0].Coefficients);
        Assert.Equal([2, 1, -2], program.Rows[1].Coefficients);
        Assert.Equal([1, 1, 0], program.Rows[1].Scatter!);
        Assert.Equal(5 * 3 + 7 * 4 + 1 * 2, program.Cost([3, 4, 2]));
        Assert.Equal([2, 1, 2, 1], first.Coefficients.Concat(second.Coefficients)); // what it was made from stays
    }

    [Fact]
    public void Row_ThatComesLater_IsWidened_AndAWideOneKept()
    {
        var program = new LinearProgram([new("x", 5, 0, 1), new("y", 7, 0, 1), new("z", 0, 0, 1)], []).With(Linear, Lower with { Coefficients = [1, 2, 3], Scatter = [0, 1, 2] });

        Assert.Equal([2, 1, 0], program.Rows[0].Coefficients);
        Assert.Null(program.Rows[0].Scatter);
        Assert.Equal([1, 2, 3], program.Rows[1].Coefficients);
        Assert.Equal([0, 1, 2], program.Rows[1].Scatter!);
    }

    [Fact]
    public void Program_WithOtherCosts_KeepsItsBounds()
    {
        var program = new LinearProgram([new("x", 5, 1, 2), new("y", 7, 3, 4, Whole: true)], [Linear]);

        Assert.Equal([new("x", 2, 1, 2), new("y", 0, 3, 4, Whole: true)], program.Priced([2]).Columns);
        Assert.Equal(0, program.Free().Cost(At));
        Assert.True(program.HasWholeColumns);
        Assert.False((program with { Columns = [program.Columns[0]] }).HasWholeColumns);
    }
}

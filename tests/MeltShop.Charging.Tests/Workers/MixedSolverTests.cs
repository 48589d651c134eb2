using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;
using MeltShop.Charging.Workers;

namespace MeltShop.Charging.Tests.Workers;

/// <summary>3 a + 5 b ≥ 7 at 2 and 3 a piece: one of each costs 5, three of a or two of b 6.</summary>
public class MixedSolverTests
{
    private static readonly MixedQuestion Question =
        new([new("a", 2, 0, 10, Whole: true), new("b", 3, 0, 10, Whole: true)], [new([3, 5], 7, double.PositiveInfinity)], 10_000);

    [Theory]
    [InlineData(NativeProgram.Pieces)]
    [InlineData(NativeProgram.OtherPieces)]
    public void EitherSolver_FindsTheCheapestNumbers(string engine)
    {
        var answer = MixedSolver.Solve(Question, engine, new(TimeSpan.FromMinutes(5), TestContext.Current.CancellationToken));

        Assert.Equal(PlanStatus.Optimal, answer.Status);
        Assert.Equal(1, answer.Values![0], 1e-6);
        Assert.Equal(1, answer.Values[1], 1e-6);
        Assert.Equal(5, answer.Bound!.Value, 1e-5);
    }

    [Theory]
    [InlineData(1, 1, true)]
    [InlineData(1, 0.99995, true)] // what a solver's tolerances leave
    [InlineData(1, 0.79999, false)] // no whole number
    [InlineData(0, 1, false)] // 5 are no 7
    [InlineData(-1, 2, false)] // 7, with less than nothing
    [InlineData(11, 0, false)] // more than there is
    [InlineData(double.NaN, 2, false)]
    public void Values_OutsideOfRowsOrBoundsOrBetweenWholeNumbers_AreNoAnswer(double a, double b, bool isKept) =>
        Assert.Equal(isKept, MixedSolver.Keeps(Question, new(PlanStatus.Optimal, [a, b], 5)));

    [Fact]
    public void NoValues_MissNothing() => Assert.True(MixedSolver.Keeps(Question, MixedAnswer.Without(SearchEnd.OutOfTime)));
}

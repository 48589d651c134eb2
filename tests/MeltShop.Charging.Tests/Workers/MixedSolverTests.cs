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

    /// <summary>A solver that gave up, and one whose answer is no answer, have the other one asked.</summary>
    [Theory]
    [InlineData(null, null, null)]
    [InlineData(PlanStatus.Optimal, 0d, 1d)]
    public void FirstSolver_GaveUpOrErred_HasTheOtherOneAsked(PlanStatus? status, double? a, double? b)
    {
        var budget = new Budget(TimeSpan.FromMinutes(5), TestContext.Current.CancellationToken);
        var answer = MixedSolver.Solve(Question, engine => engine is NativeProgram.Pieces ? Of(status, a, b) : MixedSolver.Solve(Question, engine, budget));

        Assert.Equal((PlanStatus.Optimal, SearchEnd.Proven), (answer.Status, answer.End));
        Assert.Equal([1, 1], answer.Values!.Select(value => Math.Round(value, 6)));
    }

    [Theory]
    [InlineData(null, null, null)]
    [InlineData(PlanStatus.Optimal, 0d, 1d)]
    public void BothSolvers_GaveUpOrErred_DecideNothing(PlanStatus? status, double? a, double? b)
    {
        var answer = MixedSolver.Solve(Question, engine => engine is NativeProgram.Pieces ? Of(PlanStatus.Optimal, 11, 0) : Of(status, a, b));

        Assert.Equal(((PlanStatus?)null, (double[]?)null, SearchEnd.Undecided), (answer.Status, answer.Values, answer.End));
    }

    [Fact]
    public void FirstSolver_HasAnAnswer_HasNobodyElseAsked() =>
        Assert.Equal(5, MixedSolver.Solve(Question, engine => engine is NativeProgram.Pieces ? Of(PlanStatus.Optimal, 1, 1) : throw new InvalidOperationException("asked")).Bound);

    /// <summary>A price below zero and no end to it: no solver has a cheapest number, and none crashes the worker for it.</summary>
    [Fact]
    public void Solver_ThatCannotDecide_GivesUp()
    {
        var endless = new MixedQuestion([new("a", -1, 0, double.PositiveInfinity, Whole: true)], [new([1], 0, double.PositiveInfinity)], 10_000);

        var answer = MixedSolver.Solve(endless, NativeProgram.Pieces, new(TimeSpan.FromMinutes(5), TestContext.Current.CancellationToken));

        Assert.Equal(((PlanStatus?)null, (double[]?)null, SearchEnd.Undecided), (answer.Status, answer.Values, answer.End));
    }

    private static MixedAnswer Of(PlanStatus? status, double? a, double? b) => new(status, a is null ? null : [a.Value, b!.Value], a is null ? null : 5);

    [Fact]
    public void NoValues_MissNothing() => Assert.True(MixedSolver.Keeps(Question, MixedAnswer.Without(SearchEnd.OutOfTime)));
}

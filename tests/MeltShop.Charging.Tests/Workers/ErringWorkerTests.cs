using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;
using MeltShop.Charging.Workers;

namespace MeltShop.Charging.Tests.Workers;

/// <summary>Answers of a worker that cannot be: none of them counts as a proof. The worker is a shell script with its answers in it.</summary>
[Collection(nameof(Alone))]
public sealed class ErringWorkerTests : IDisposable
{
    private const string Infeasible = """{"status":1,"values":null,"bound":null}""";
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("worker");

    private string Asked => Path.Combine(folder.FullName, "asked");

    public void Dispose()
    {
        PieceWorkers.Use(null);
        folder.Delete(recursive: true);
    }

    /// <summary>x + n pieces less what scatters, √((x / 10)² + (n / 5)²), are to be 3: with one piece x is 2.305.</summary>
    [Fact]
    public void Infeasible_WhereAPlanWasFound_IsNoProofOfIt()
    {
        Answer("""{"status":0,"values":[2,1],"bound":2.5}""", Infeasible);

        var solution = Solve(Cone(mostX: 10));

        Assert.Equal((PlanStatus.TimeLimit, SearchEnd.Undecided), (solution.Status, solution.End));
        Assert.Equal(1, solution.Values[1], 1e-9);
        Assert.Equal(3, solution.Values[0] + 1 - Math.Sqrt(0.01 * solution.Values[0] * solution.Values[0] + 0.04), 1e-6);
        Assert.True(solution.Bound < solution.Values[0] + 0.5);
    }

    [Fact]
    public void Numbers_ThatWereRuledOut_AreNotAskedForAThirdTime()
    {
        // Without a piece 2.5 at most less 0.25 are no 3.
        Answer("""{"status":0,"values":[2.5,0],"bound":2.5}""");

        var solution = Solve(Cone(mostX: 2.5));

        Assert.Equal((PlanStatus.TimeLimit, SearchEnd.Undecided), (solution.Status, solution.End));
        Assert.True(solution.Values[1] >= 1);
        Assert.Equal(2, File.ReadAllLines(Asked).Length);
    }

    /// <summary>Three of two pieces are 6.</summary>
    [Theory]
    [InlineData(6.00001, false)]
    [InlineData(6.00000005, true)]
    public void Numbers_ThatTheContinuousProgramCallsImpossible_AreOptimalOnlyWithinADigit(double least, bool isOptimal)
    {
        Answer("""{"status":0,"values":[2],"bound":2}""");

        var solution = Solve(new([new("n", 1, 0, 10, Whole: true)], [new("three of each", [3], least, double.PositiveInfinity)]));

        Assert.Equal(isOptimal ? (PlanStatus.Optimal, SearchEnd.Proven, 2) : (PlanStatus.TimeLimit, SearchEnd.Undecided, 3), (solution.Status, solution.End, solution.Values[0]));
    }

    private static LinearProgram Cone(double mostX) =>
        new([new("x", 1, 0, mostX), new("n", 0.5, 0, 5, Whole: true)], [new("cone", [1, 1], 3, double.PositiveInfinity) { Scatter = [0.1, 0.2] }]);

    private static Solution Solve(LinearProgram program) => PieceSolver.Solve(program, new(TimeSpan.FromMinutes(5), TestContext.Current.CancellationToken));

    /// <summary>Gives the answers in turn, the last one for ever, and writes down that it was asked.</summary>
    private void Answer(params string[] answers)
    {
        var turns = string.Concat(answers[..^1].Select(answer => $"read line; echo asked >> '{Asked}'; echo '{answer}'; "));
        PieceWorkers.Use(new("/bin/sh", "-c", $"{turns}while read line; do echo asked >> '{Asked}'; echo '{answers[^1]}'; done"));
    }
}

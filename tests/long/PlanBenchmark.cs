using System.Diagnostics;
using MeltShop.Charging;
using MeltShop.Charging.Formulation;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Long;

/// <summary>One plan of 25 materials × 8 elements (marginal costs, prices to enter, re-evaluation and all) against the bare solver on the same matrix.</summary>
internal static class PlanBenchmark
{
    private const int Rounds = 1000;

    public static bool Run()
    {
        ChargeOptimiser.WarmUp();
        var problem = YardOf25();
        var (columns, rows) = Matrix(problem);
        var (bare, plan) = (new double[Rounds], new double[Rounds]);
        for (var i = -100; i < Rounds; i++)
        {
            var bareTime = Time(() => Bare(columns, rows));
            var planTime = Time(() => ChargeOptimiser.Plan(problem));
            if (i >= 0) (bare[i], plan[i]) = (bareTime, planTime);
        }

        Array.Sort(bare);
        Array.Sort(plan);
        Console.WriteLine($"bare solver: median {bare[Rounds / 2]:F3} ms, p95 {bare[Rounds * 95 / 100]:F3} ms");
        Console.WriteLine($"plan:        median {plan[Rounds / 2]:F3} ms, p95 {plan[Rounds * 95 / 100]:F3} ms");
        var ratio = plan[Rounds / 2] / bare[Rounds / 2];
        Console.WriteLine($"ratio:       median {ratio:F2}, p95 {plan[Rounds * 95 / 100] / bare[Rounds * 95 / 100]:F2} (bar: 3 at the median)");
        return ratio <= 3;
    }

    private static ChargeProblem YardOf25()
    {
        // The first seed with a plain, possible yard of 25 materials and 8 elements or more.
        for (var seed = 1; ; seed++)
        {
            var problem = RandomYard.Charge(seed);
            if (problem.Materials.Count != 25 || problem.Limits.Count < 8) continue;
            if (ChargeOptimiser.Plan(problem).Lines.Count > 0) return problem;
        }
    }

    private static (IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows) Matrix(ChargeProblem problem)
    {
        var formulation = new MeltFormulation(ChargeOptimiser.MeltOf(problem));
        var program = formulation.Program(formulation.Bounds);
        return (program.Columns, program.Rows);
    }

    private static void Bare(IReadOnlyList<Column> columns, IReadOnlyList<Row> rows)
    {
        using var native = new NativeProgram(columns, rows);
        native.Solve(new Budget(TimeSpan.FromSeconds(10), CancellationToken.None));
        native.Values();
    }

    private static double Time(Action action)
    {
        var started = Stopwatch.GetTimestamp();
        action();
        return Stopwatch.GetElapsedTime(started).TotalMilliseconds;
    }
}

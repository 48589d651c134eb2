using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;
using MeltShop.Charging.Tests.Support;
using MeltShop.Charging.Workers;

namespace MeltShop.Long;

/// <summary>Plans with whole pieces by a worker process, as when serving, against the bare mixed solver in this process on the same matrix.</summary>
internal static class PiecesBenchmark
{
    private const int Seeds = 100;

    private const double MostRatio = 10;

    public static bool Run()
    {
        PieceWorkers.Use(new("dotnet", typeof(PiecesBenchmark).Assembly.Location, "solve"));
        ChargeOptimiser.WarmUp();
        var (bare, plan, proven) = (new double[Seeds], new double[Seeds], 0);
        for (var seed = 1; seed <= Seeds; seed++)
        {
            var problem = RandomYard.Charge(seed, pieces: true);
            var (columns, rows) = Yards.Matrix(problem);
            bare[seed - 1] = Timing.Time(() =>
            {
                using var native = new NativeProgram(columns, rows, NativeProgram.Pieces);
                native.Solve(new Budget(TimeSpan.FromSeconds(60), CancellationToken.None));
            });
            ChargePlan? answer = null;
            plan[seed - 1] = Timing.Time(() => answer = ChargeOptimiser.Plan(problem));
            if (answer!.End == SearchEnd.Proven) proven++;
            else Console.WriteLine($"seed {seed}: {answer.Status}, {answer.End}, {answer.Lines.Count} materials, gap {answer.GapPercent:F4} %");
        }

        var (floor, mine) = (Timing.Of(bare), Timing.Of(plan));
        Console.WriteLine($"yards with pieces, seeds 1 to {Seeds}: floor {floor}, plan {mine}, longest {mine.Longest:F0} ms; {proven} proven; ratio {mine.Median / floor.Median:F2} at the median, {mine.P95 / floor.P95:F2} at p95");
        PieceWorkers.Use(null);
        return proven == Seeds && mine.Median / floor.Median <= MostRatio;
    }
}

using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;
using MeltShop.Charging.Tests.Support;
using MeltShop.Charging.WhatIf;
using MeltShop.Charging.Workers;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Workers;

/// <summary>Workers that answer, hang, crash, babble, swell, or are not there. The worker is this program with the argument <c>solve</c>.</summary>
[Collection(nameof(Alone))]
public sealed class WorkerTests : IDisposable
{
    private static readonly string Self = Path.Combine(AppContext.BaseDirectory, "MeltShop.Charging.Tests.dll");
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("worker");

    /// <summary>Half of a (1 % Si, pieces of 130 kg) and half of b (2 %): with 5 % of room there are charges of whole pieces, 3 or 4 of a.</summary>
    private static readonly ChargeProblem Pieces = new()
    {
        MeltKg = 1000,
        MeltToleranceKg = 50,
        Materials = [Material("a", 300, (Element.Si, 1)) with { PieceKg = 130 }, Material("b", 400, (Element.Si, 2))],
        Limits = [Limit(Element.Si, 1.5, 1.7)],
    };

    private string PidFile => Path.Combine(folder.FullName, "pids");

    public void Dispose()
    {
        PieceWorkers.Use(null);
        folder.Delete(recursive: true);
    }

    [Fact]
    public void Worker_PlansWhatThisProcessPlans()
    {
        int[] seeds = [1, 2, 3, 5];
        var here = seeds.Select(s => Plan(RandomYard.Charge(s, pieces: true))).ToList();
        PieceWorkers.Use(Real());

        var there = seeds.Select(s => Plan(RandomYard.Charge(s, pieces: true))).ToList();

        Assert.Equal(here.Select(p => (p.Status, p.TotalCost, p.End)), there.Select(p => (p.Status, p.TotalCost, p.End)));
        Assert.Contains(there, p => p.Status == PlanStatus.Optimal && p.GapPercent is null);
        Assert.Single(File.ReadAllLines(PidFile)); // one worker answered them all
    }

    [Fact]
    public void FirstPlan_AfterTheWarmUp_FindsItsWorkerThere()
    {
        PieceWorkers.Use(Real());
        ChargeOptimiser.WarmUp();
        Assert.Single(File.ReadAllLines(PidFile));

        Assert.Equal(PlanStatus.Optimal, Plan(Pieces).Status);
        Assert.Single(File.ReadAllLines(PidFile));
    }

    [Fact]
    public async Task Worker_KilledWhileItSolves_IsSaidToBeLostAndReplaced()
    {
        PieceWorkers.Use(Real());
        var planning = Task.Run(() => Plan(HardPieces.Problem()), TestContext.Current.CancellationToken);
        using (var worker = System.Diagnostics.Process.GetProcessById(await Started())) worker.Kill();

        var plan = await planning;

        Assert.Equal((PlanStatus.TimeLimit, SearchEnd.WorkerLost), (plan.Status, plan.End));
        Assert.Equal(PlanStatus.Optimal, Plan(Pieces).Status);
        Assert.Equal(2, File.ReadAllLines(PidFile).Length);
    }

    [Fact]
    public void Purchases_WhoseSearchIsLost_AreSaidToBeUncertain()
    {
        PieceWorkers.Use(new("/bin/sh", "-c", "read line; exit 1"));

        // Pieces of 130 kg never make 1000 kg of themselves, and there is nothing else: that is to be proven, and nobody does.
        var buy = Purchases.Of(Pieces with { MeltToleranceKg = 5, Limits = [], Materials = [Pieces.Materials[0] with { AvailableKg = 130 }] }, [], TestContext.Current.CancellationToken);

        Assert.True(buy.IsUncertain);
        Assert.Empty(buy.Possible);
    }

    [Fact]
    public async Task Cancelling_EndsTheCallAndTheProcess()
    {
        PieceWorkers.Use(Real());
        using var stop = new CancellationTokenSource();
        var planning = Task.Run(() => ChargeOptimiser.Plan(HardPieces.Problem(), stop.Token), TestContext.Current.CancellationToken);
        var pid = await Started();

        await stop.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => planning);
        await Gone(pid);
    }

    [Fact]
    public async Task PlainPlans_GoOn_WhileWholePiecesTakeEverySeat()
    {
        PieceWorkers.Use(Real());
        using var stop = new CancellationTokenSource();
        var hard = Enumerable.Range(0, Environment.ProcessorCount + 2).Select(_ => Task.Run(() => ChargeOptimiser.Plan(HardPieces.Problem(), stop.Token))).ToList();
        await Started();

        var plain = Plan(GreyIron.Problem(50, Limit(Element.C, 3.3, 3.4), Limit(Element.Si, 1.9, 2)));

        Assert.Equal(PlanStatus.Optimal, plain.Status);
        Assert.DoesNotContain(hard, h => h.IsCompleted);
        Assert.InRange(File.ReadAllLines(PidFile).Length, 1, Seats.Pieces);
        await stop.CancelAsync();
        foreach (var task in hard) await Assert.ThrowsAnyAsync<OperationCanceledException>(() => task);
    }

    [Theory]
    [InlineData("read line; kill -SEGV $$")]
    [InlineData("read line; exit 1")]
    [InlineData("read line; echo '{\"status\": \"nonsense'; read line")]
    public void Worker_ThatCrashesOrBabbles_LeavesAPlanOfWholePiecesWithAStatedGap(string script)
    {
        var proven = Plan(Pieces);
        PieceWorkers.Use(Shell(script));

        var plan = Plan(Pieces);

        Assert.Equal((PlanStatus.TimeLimit, SearchEnd.WorkerLost), (plan.Status, plan.End));
        Assert.True(ChargeCheck.Of(Pieces, plan.Lines.ToDictionary(l => l.Code, l => l.Kg)).Holds);
        // Uncut, half and half of 1000 kg cost 350: no plan costs less.
        Assert.Equal(100 * (plan.TotalCost - 350) / plan.TotalCost, plan.GapPercent!.Value, 1e-4);
        Assert.InRange(proven.TotalCost, 350, plan.TotalCost + 1e-9);
        Assert.Null(plan.Continuous);
    }

    [Fact]
    public void Worker_ThatCrashesWhereNoWholePiecesAreFound_LeavesTheContinuousCharge()
    {
        PieceWorkers.Use(Shell("read line; exit 1"));

        // a alone, in pieces of 130 kg, never makes 1000 kg; without a proof nobody says so.
        var plan = Plan(Pieces with { MeltToleranceKg = 0, Materials = [Pieces.Materials[0]], Limits = [] });

        Assert.Equal((PlanStatus.TimeLimit, SearchEnd.WorkerLost), (plan.Status, plan.End));
        Assert.Empty(plan.Lines);
        Assert.Equal(MissKind.Pieces, Assert.Single(plan.Continuous!.Misses).Kind);
        Assert.Equal(300, plan.Continuous.Costs.Total, 1e-6);
    }

    [Fact]
    public void Worker_ThatCrashesWhileConflictsAreSought_LeavesASetThatIsNotSaidToBeTheLeast()
    {
        var impossible = Pieces with { MeltToleranceKg = 0, Materials = [Pieces.Materials[0]], Limits = [Limit(Element.Si, 1.5, 1.7)] };
        Assert.False(Plan(Pieces with { Limits = [Limit(Element.Si, 3, 4)] }).MayConflictsBeFewer);
        PieceWorkers.Use(Shell("read line; exit 1"));

        // 1 % is not 1.5 % whatever the pieces are; whether it is the pieces alone cannot be said without a worker.
        var plan = Plan(impossible);

        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        Assert.True(plan.MayConflictsBeFewer);
    }

    [Fact]
    public void Chatter_BeforeTheAnswer_IsPassedOver()
    {
        PieceWorkers.Use(Shell($"echo 'solver 1.0'; echo; exec dotnet '{Self}' solve"));

        Assert.Equal(PlanStatus.Optimal, Plan(Pieces).Status);
    }

    [Fact]
    public void Worker_ThatIsNotThere_IsLost()
    {
        PieceWorkers.Use(new(Path.Combine(folder.FullName, "no such program")));

        Assert.Equal(SearchEnd.WorkerLost, Plan(Pieces).End);
    }

    [Fact]
    public async Task Worker_ThatTakesTooMuchMemory_IsKilled()
    {
        PieceWorkers.Use(Shell("exec dd if=/dev/zero of=/dev/null bs=300M") with { MostBytes = 100 << 20 });

        Assert.Equal(SearchEnd.WorkerLost, Plan(Pieces).End);
        await Gone(int.Parse(File.ReadAllLines(PidFile)[0], System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public async Task Worker_ThatNeverAnswers_IsKilledAfterItsTime()
    {
        // It reads nothing either: the question is longer than a pipe holds.
        PieceWorkers.Use(Shell("exec sleep 600"));
        var yard = RandomYard.Charge(2, pieces: true);
        var program = new MeltFormulation(ChargeOptimiser.MeltOf(yard with { Materials = [.. Enumerable.Range(0, 40).SelectMany(k => yard.Materials.Select(m => m with { Code = $"{m.Code} {k}" }))] })).Whole();

        var clock = new ForwardClock();
        var solving = Task.Run(() => PieceSolver.Solve(program, new Budget(TimeSpan.FromHours(1), TestContext.Current.CancellationToken, clock)), TestContext.Current.CancellationToken);
        var pid = await Started();
        Assert.False(solving.IsCompleted);
        clock.Put(TimeSpan.FromHours(1) + TimeSpan.FromSeconds(10)); // with what it takes beyond the solve

        var solution = await solving;
        Assert.Equal((PlanStatus.TimeLimit, SearchEnd.OutOfTime), (solution.Status, solution.End));
        await Gone(pid);
    }

    [Fact]
    public void ImpossibleEvenIfCut_NeedsNoWorker()
    {
        PieceWorkers.Use(Real());

        Assert.Equal(PlanStatus.Infeasible, ProgramSolver.Solve(new MeltFormulation(ChargeOptimiser.MeltOf(Pieces with { Limits = [Limit(Element.Si, 2.5, 3)] })).Whole(), new Budget(TimeSpan.FromMinutes(5), default)).Status);
        Assert.False(File.Exists(PidFile));
    }

    [Fact]
    public void SolverThatCannotDecide_IsAnAnswer()
    {
        // A price that is no number is refused long before it comes here; no solver can decide with it.
        var plan = Plan(Pieces with { Materials = [Material("a", double.NaN, (Element.Si, 1)), Pieces.Materials[1]] });

        Assert.Equal((PlanStatus.TimeLimit, SearchEnd.Undecided), (plan.Status, plan.End));
        Assert.Empty(plan.Lines);
    }

    private static ChargePlan Plan(ChargeProblem problem) => ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);

    private WorkerCommand Real() => Shell($"exec dotnet '{Self}' solve");

    /// <summary>A worker made of a shell script, which first writes down its process number; a busy machine may take longer than a search may in a shop.</summary>
    private WorkerCommand Shell(string script) => new("/bin/sh", "-c", $"echo $$ >> '{PidFile}'; {script}") { MostTime = TimeSpan.FromHours(1) };

    private async Task<int> Started()
    {
        while (!File.Exists(PidFile) || !(await File.ReadAllTextAsync(PidFile, TestContext.Current.CancellationToken)).EndsWith('\n')) await Pause();
        return int.Parse((await File.ReadAllLinesAsync(PidFile, TestContext.Current.CancellationToken))[0], System.Globalization.CultureInfo.InvariantCulture);
    }

    private static async Task Gone(int pid)
    {
        while (IsThere(pid)) await Pause();
    }

    private static bool IsThere(int pid)
    {
        try
        {
            using var process = System.Diagnostics.Process.GetProcessById(pid);
            return !process.HasExited;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    /// <summary>A clock that goes with the time and can be put forward.</summary>
    private sealed class ForwardClock : TimeProvider
    {
        private long ahead;

        public void Put(TimeSpan time) => Interlocked.Add(ref ahead, (long)(time.TotalSeconds * TimestampFrequency));

        public override long GetTimestamp() => base.GetTimestamp() + Interlocked.Read(ref ahead);
    }

    private static Task Pause() => Task.Delay(20, TestContext.Current.CancellationToken);
}

using System.Collections.Concurrent;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Workers;

/// <summary>
/// Where programs with whole pieces are solved. Their native solver cannot be stopped, overruns its time and may take its process down; a worker process can
/// be killed and replaced. Workers are kept between questions and end when this process does.
/// </summary>
public static class PieceWorkers
{
    private static readonly ConcurrentBag<WorkerProcess> Idle = [];
    private static readonly TimeSpan InThisProcess = TimeSpan.FromMinutes(10);
    private static WorkerCommand? command;

    /// <summary>Has pieces solved by workers from now on. Without this call they are solved in this process, which is for tools and tests that may die.</summary>
    /// <param name="workers">How they are started; null for this process.</param>
    public static void Use(WorkerCommand? workers)
    {
        command = workers;
        while (Idle.TryTake(out var idle)) idle.Dispose();
    }

    /// <summary>What a plan with whole pieces may take. Where this process solves it nobody at a furnace waits, and the machine may be a busy one.</summary>
    internal static TimeSpan MostTime => command?.MostTime ?? InThisProcess;

    /// <summary>Solves, or says how the search ended without an answer. Nothing that a worker does is a fault of this process.</summary>
    /// <exception cref="OperationCanceledException">The caller wished to stop; the worker is gone.</exception>
    internal static MixedAnswer Solve(MixedQuestion question, Budget budget)
    {
        if (command is not { } mine) return MixedSolver.Solve(question, budget.Cancellation);
        if (Take(mine) is not { } worker) return MixedAnswer.Without(SearchEnd.WorkerLost);
        try
        {
            return worker.Ask(question, budget);
        }
        finally
        {
            if (worker.IsWell && mine == command) Idle.Add(worker);
            else worker.Dispose();
        }
    }

    private static WorkerProcess? Take(WorkerCommand mine)
    {
        while (Idle.TryTake(out var idle))
        {
            if (idle.IsWell && idle.Command == mine) return idle;
            idle.Dispose();
        }

        return WorkerProcess.Start(mine);
    }
}

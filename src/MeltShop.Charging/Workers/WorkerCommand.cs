using MeltShop.Charging.Planning;

namespace MeltShop.Charging.Workers;

/// <summary>How a worker process is started: a program that calls <see cref="SolveWorker.Serve"/> on its standard input and output.</summary>
/// <param name="File">The program.</param>
/// <param name="Arguments">Its arguments.</param>
public sealed record WorkerCommand(string File, params IReadOnlyList<string> Arguments)
{
    /// <summary>A worker that holds more memory than this is ended, bytes.</summary>
    public long MostBytes { get; init; } = 1L << 30;

    /// <summary>What a plan with whole pieces may take, all its searches together; over 0.</summary>
    public TimeSpan MostTime { get; init; } = MeltPlanner.MostTime;
}

using System.Collections.Concurrent;
using System.ComponentModel;
using System.Diagnostics;
using System.Text.Json;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Workers;

/// <summary>A worker process, seen from outside. It is killed when it overruns its time or its memory, and when nobody waits any more.</summary>
internal sealed class WorkerProcess : IDisposable
{
    /// <summary>How often time and memory are looked at.</summary>
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(50);

    /// <summary>How long a worker may take beyond the solve itself: to start, to read, to answer.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(2);

    private readonly Process process;
    private readonly BlockingCollection<string?> lines = [];

    private WorkerProcess(WorkerCommand command, Process process)
    {
        (Command, this.process) = (command, process);
        // A native library may print; an answer begins like this.
        process.OutputDataReceived += (_, e) =>
        {
            if (e.Data is null || e.Data.StartsWith('{')) lines.Add(e.Data);
        };
        process.BeginOutputReadLine();
    }

    public WorkerCommand Command { get; }

    /// <summary>Whether it may be asked again.</summary>
    public bool IsWell { get; private set; } = true;

    /// <summary>A new worker; null where the program cannot be started.</summary>
    public static WorkerProcess? Start(WorkerCommand command)
    {
        try
        {
            var start = new ProcessStartInfo(command.File, command.Arguments) { RedirectStandardInput = true, RedirectStandardOutput = true };
            start.Environment["DOTNET_gcServer"] = "0"; // a heap for each core is what a server needs, and no worker
            var process = Process.Start(start);
            return process is null ? null : new(command, process);
        }
        catch (Win32Exception)
        {
            return null;
        }
    }

    /// <summary>Asks and waits.</summary>
    /// <exception cref="OperationCanceledException">The caller wished to stop; the process is killed.</exception>
    public MixedAnswer Ask(MixedQuestion question, Budget budget)
    {
        IsWell = false;
        _ = Write(JsonSerializer.Serialize(question, MixedQuestion.Json));
        string? line;
        while (!lines.TryTake(out line, (int)Look.TotalMilliseconds, budget.Cancellation))
        {
            if (budget.Left < -Grace) return Ended(SearchEnd.OutOfTime);
            if (IsTooLarge()) return Ended(SearchEnd.WorkerLost);
        }

        if (line is null || Read(line) is not { } answer) return Ended(SearchEnd.WorkerLost);
        IsWell = true;
        return answer;
    }

    public void Dispose()
    {
        try
        {
            process.Kill(entireProcessTree: true);
        }
        catch (Exception gone) when (gone is InvalidOperationException or Win32Exception)
        {
            // It has ended by itself.
        }

        process.Dispose();
    }

    private static MixedAnswer? Read(string line)
    {
        try
        {
            return JsonSerializer.Deserialize<MixedAnswer>(line, MixedQuestion.Json);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static MixedAnswer Ended(SearchEnd end) => MixedAnswer.Without(end);

    /// <summary>A worker that reads nothing must not hold up who waits: the pipe may be full.</summary>
    private async Task Write(string line)
    {
        try
        {
            await process.StandardInput.WriteLineAsync(line).ConfigureAwait(false);
            await process.StandardInput.FlushAsync().ConfigureAwait(false);
        }
        catch (Exception gone) when (gone is IOException or ObjectDisposedException or InvalidOperationException)
        {
            // Its output ends too, and that is what is waited for.
        }
    }

    private bool IsTooLarge()
    {
        try
        {
            process.Refresh();
            return process.WorkingSet64 > Command.MostBytes;
        }
        catch (InvalidOperationException)
        {
            return false; // It has ended: so does its output.
        }
    }
}

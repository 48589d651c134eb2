using System.Runtime.InteropServices;
using MeltShop.Charging;
using MeltShop.Charging.Workers;
using MeltShop.Web.Commands;

namespace MeltShop.Web.Composition;

/// <summary>Serving, whole pieces are solved by workers, which are this program with another command; and the solver of all else is loaded before anybody waits for it.</summary>
internal sealed class Solvers(ILogger<Solvers> log) : BackgroundService
{
    public override Task StartAsync(CancellationToken cancellationToken)
    {
        PieceWorkers.Use(Command);
        return base.StartAsync(cancellationToken);
    }

    /// <summary>How a worker is started: by the host of the runtime that this program runs on, or as the program itself where it brings its own runtime.</summary>
    internal static WorkerCommand Command
    {
        get
        {
            var library = Path.Combine(AppContext.BaseDirectory, $"{typeof(Solvers).Assembly.GetName().Name}.dll");
            var host = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", "..", OperatingSystem.IsWindows() ? "dotnet.exe" : "dotnet"));
            return File.Exists(host) && File.Exists(library) ? new(host, library, SolveCommand.Word) : new(Environment.ProcessPath!, SolveCommand.Word);
        }
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await Task.Yield();
        try
        {
            ChargeOptimiser.WarmUp();
        }
        catch (Exception fault) when (fault is DllNotFoundException or TypeInitializationException or InvalidOperationException)
        {
            log.LogCritical(fault, "The solver cannot be loaded: no charge can be planned");
        }
    }
}

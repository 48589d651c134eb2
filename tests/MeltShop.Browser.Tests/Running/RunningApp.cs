using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Reflection;
using System.Text;

namespace MeltShop.Browser.Tests.Running;

/// <summary>The program as a user starts it: a process with a data folder of its own, on loopback, with the demo foundry.</summary>
public sealed class RunningApp : IAsyncLifetime
{
    private static readonly TimeSpan StartLimit = TimeSpan.FromSeconds(300);
    private static int lastPort = 20_000 + (Environment.ProcessId % 10_000);
    private readonly string dataFolder = Directory.CreateTempSubdirectory("meltshop-browser-").FullName;
    private readonly StringBuilder log = new();
    private Process? process;

    /// <summary>Where the program's source lies.</summary>
    public static string WebFolder => Metadata("WebFolder");

    public Uri Address { get; } = new($"http://127.0.0.1:{OwnPort()}");

    /// <summary>What the program has printed, for the message of a failed test.</summary>
    public string Log
    {
        get { lock (log) return log.ToString(); }
    }

    /// <summary>Where the records are.</summary>
    public string Database => Path.Combine(dataFolder, "meltshop.db");

    /// <summary>Starts it where tests share it; a test that kills it starts its own.</summary>
    public async ValueTask InitializeAsync() => await StartAsync();

    /// <summary>Starts the program, with more settings where a test needs them: <c>MeltShop__KeepCircuitSeconds</c>.</summary>
    public Task StartAsync(params (string Name, string Value)[] settings)
    {
        var laysItself = settings.Any(setting => setting.Name is "MeltShop__Demo" or "MeltShop__Database") || File.Exists(Database);
        return laysItself ? RunAsync(settings) : LaidDemo.StartAsync(dataFolder, () => RunAsync(settings));
    }

    private async Task RunAsync((string Name, string Value)[] settings)
    {
        var start = Program(["--urls", Address.ToString()], settings);
        process = Process.Start(start) ?? throw new InvalidOperationException("The program did not start.");
        process.OutputDataReceived += (_, line) => Keep(line.Data);
        process.ErrorDataReceived += (_, line) => Keep(line.Data);
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        await WaitUntilReadyAsync(process);
    }

    /// <summary>Runs a command of the program on the same data folder. Answers its exit code and all that it printed.</summary>
    public async Task<(int Code, string Words)> CommandAsync(string[] command, params (string Name, string Value)[] settings)
    {
        var start = Program(command, settings);
        using var run = Process.Start(start) ?? throw new InvalidOperationException("The program did not start.");
        var words = await Task.WhenAll(run.StandardOutput.ReadToEndAsync(), run.StandardError.ReadToEndAsync());
        await run.WaitForExitAsync();
        return (run.ExitCode, string.Concat(words));
    }

    /// <summary>Ends the process the hard way, as a power cut does; the data folder stays.</summary>
    public async Task KillAsync()
    {
        if (process is null) return;
        if (!process.HasExited) process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
        process = null;
    }

    public async ValueTask DisposeAsync()
    {
        await KillAsync();
        SignedIn.Forget(Address);
        Directory.Delete(dataFolder, recursive: true);
    }

    private ProcessStartInfo Program(string[] arguments, (string Name, string Value)[] settings)
    {
        var start = new ProcessStartInfo("dotnet", [Metadata("WebProgram"), .. arguments])
        {
            WorkingDirectory = WebFolder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment =
            {
                ["ASPNETCORE_ENVIRONMENT"] = "Development", ["MeltShop__DataFolder"] = dataFolder,
                ["EnableStaticAssetsDevelopmentCaching"] = "true", ["ReloadStaticAssetsAtRuntime"] = "false", // as a published one: a browser keeps styles and scripts
                ["DOTNET_TC_CallCounting"] = "0", // it lives for a minute: no code gets hot enough to be worth compiling a second time
                ["MeltShop__SilentAfterSeconds"] = "15", // a busy machine answers late: its touches would be dropped
            },
        };
        foreach (var (name, value) in settings) start.Environment[name] = value;
        return start;
    }

    private async Task WaitUntilReadyAsync(Process running)
    {
        using var client = new HttpClient { Timeout = Timeout.InfiniteTimeSpan }; // the limit is below
        using var limit = new CancellationTokenSource(StartLimit);
        while (true)
        {
            if (running.HasExited) throw new InvalidOperationException($"The program ended with {running.ExitCode}:\n{Log}");
            try
            {
                using var answer = await client.GetAsync(new Uri(Address, "/health/ready"), limit.Token);
                if (answer.StatusCode == HttpStatusCode.OK) return;
            }
            catch (HttpRequestException)
            {
                // not listening yet
            }
            catch (OperationCanceledException)
            {
                throw new TimeoutException($"Not ready after {StartLimit.TotalSeconds:0} s:\n{Log}");
            }

            await Task.Delay(TimeSpan.FromMilliseconds(200), CancellationToken.None);
        }
    }

    private void Keep(string? line)
    {
        lock (log) log.AppendLine(line);
    }

    /// <summary>Below those that the system gives to whoever asks for any: while a program is down, nobody else gets the one that it comes back to.</summary>
    private static int OwnPort()
    {
        while (true)
        {
            var port = Interlocked.Increment(ref lastPort);
            using var listener = new TcpListener(IPAddress.Loopback, port);
            try
            {
                listener.Start();
                return port;
            }
            catch (SocketException)
            {
                // somebody else's
            }
        }
    }

    private static string Metadata(string key) =>
        typeof(RunningApp).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == key).Value!;
}

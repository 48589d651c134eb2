using System.Diagnostics;
using System.Security.Cryptography;
using Npgsql;

namespace MeltShop.Records.Tests.Databases;

/// <summary>A PostgreSQL server of one test, as durable as it comes, which the test may kill: its own data, its own process.</summary>
public sealed class OwnPostgres : IAsyncDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("meltshop-own-postgres-");
    private int port;

    private string Data => Path.Combine(folder.FullName, "data");

    public RecordsOptions Options => new()
    {
        Provider = RecordsProvider.Postgres,
        ConnectionString = $"Host=127.0.0.1;Port={port};Username=postgres;Database=shop;Timeout=300;Command Timeout=600;Maximum Pool Size=40",
    };

    public static async Task<OwnPostgres> Make()
    {
        var server = new OwnPostgres();
        await Run("chmod", "711", server.folder.FullName);
        if (IsRoot) await Run("chown", "postgres", server.folder.FullName);
        await AsServer("initdb", "--pgdata", server.Data, "--auth", "trust", "--username", "postgres", "--encoding", "UTF8", "--locale", "C.UTF-8", "--no-sync");
        for (var attempt = 1; ; attempt++)
        {
            // Below those that the system hands out to whoever connects: such a one could be taken while the server is down.
            server.port = RandomNumberGenerator.GetInt32(20_000, 32_000);
            try
            {
                await server.Start();
                return server;
            }
            catch (InvalidOperationException) when (attempt < 10)
            {
                // somebody else's
            }
        }
    }

    public Task Start() => AsServer(
        "pg_ctl", "--pgdata", Data, "--wait", "--timeout", "600", "--silent", "--log", Path.Combine(folder.FullName, "log"), "start", "--options",
        $"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories={folder.FullName} -c max_connections=60");

    /// <summary>As a power cut would: the server and all its processes at once.</summary>
    public async Task Kill()
    {
        var server = int.Parse((await File.ReadAllLinesAsync(Path.Combine(Data, "postmaster.pid")))[0], System.Globalization.CultureInfo.InvariantCulture);
        await Run("kill", "-STOP", $"{server}");
        while (await State(server) != 'T') await Task.Delay(10); // stopped, it starts no process that would be overlooked
        var children = await File.ReadAllTextAsync($"/proc/{server}/task/{server}/children");
        string[] all = [$"{server}", .. children.Split(' ', StringSplitOptions.RemoveEmptyEntries)];
        await Run("kill", ["-9", .. all]);
        while (all.Any(process => Directory.Exists($"/proc/{process}"))) await Task.Delay(10); // the next start refuses while one is still going
        NpgsqlConnection.ClearAllPools();
    }

    public async ValueTask DisposeAsync()
    {
        NpgsqlConnection.ClearAllPools();
        try
        {
            await AsServer("pg_ctl", "--pgdata", Data, "--mode", "immediate", "--silent", "stop");
        }
        catch (InvalidOperationException)
        {
            // killed and not started again: the test says so
        }

        folder.Delete(recursive: true);
    }

    private static bool IsRoot => Environment.UserName == "root";

    private static Task AsServer(string program, params string[] arguments)
    {
        var path = Directory.GetDirectories("/usr/lib/postgresql").OrderDescending(StringComparer.Ordinal).Select(d => Path.Combine(d, "bin", program)).First(File.Exists);
        return IsRoot ? Run("runuser", ["-u", "postgres", "--", path, .. arguments]) : Run(path, arguments);
    }

    /// <summary>The output goes nowhere: a server that inherits a pipe would keep it open.</summary>
    private static async Task Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", "exec \"$@\" >/dev/null 2>&1", "sh", program, .. arguments]) { WorkingDirectory = "/" })!;
        await process.WaitForExitAsync();
        if (process.ExitCode != 0 && program != "kill") throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}.");
    }

    /// <summary>What the system says of a process: behind its number and its name in brackets.</summary>
    private static async Task<char> State(int process) => (await File.ReadAllTextAsync($"/proc/{process}/stat")) is var text ? text[text.LastIndexOf(')') + 2] : default;
}

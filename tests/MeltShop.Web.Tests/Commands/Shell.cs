using System.Diagnostics;

namespace MeltShop.Web.Tests.Commands;

/// <summary>The program as a shell runs it: its exit code and both its outputs.</summary>
internal sealed record Shell(int ExitCode, string Output, string Error)
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(10);

    public string LastLine => Output.TrimEnd('\n').Split('\n')[^1].TrimEnd('\r');

    public static Task<Shell> RunAsync(string dataFolder, params string[] arguments) =>
        // Development, as `dotnet run` has it: nothing of the demo may be made by a command.
        RunAsync(arguments, ("ASPNETCORE_ENVIRONMENT", "Development"), ("MeltShop__DataFolder", dataFolder));

    public static async Task<Shell> RunAsync(string[] arguments, params (string Name, string Value)[] settings)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        limit.CancelAfter(Longest);
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "MeltShop.Web.dll"), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["DOTNET_TieredPGO"] = "0"; // a command ends long before it would gain by what it counts
        foreach (var (name, value) in settings) start.Environment[name] = value;
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(limit.Token);
        var error = process.StandardError.ReadToEndAsync(limit.Token);
        await process.WaitForExitAsync(limit.Token);
        return new(process.ExitCode, await output, await error);
    }
}

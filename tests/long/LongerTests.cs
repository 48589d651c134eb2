using System.Diagnostics;
using System.Text.RegularExpressions;

namespace MeltShop.Long;

/// <summary>
/// Tests of the ordinary suite with many more rounds, each in its own project's built program: 200 kills of the server and of the app, 10,000 changes past the
/// program on each database, 16 clients for a minute; and what a browser paints of ten million readings. Needs what tests/run sets.
/// </summary>
internal static partial class LongerTests
{
    /// <summary>80 of the server, 60 of the app on each database.</summary>
    public static async Task<bool> Kills() =>
        await Run("MELTSHOP_KILLS", 80, "MeltShop.Records.Tests", "*PostgresKillTests") & await Run("MELTSHOP_KILLS", 60, "MeltShop.Browser.Tests", "*AppKillTests");

    public static Task<bool> Tampering() => Run("MELTSHOP_CHANGES", 10_000, "MeltShop.Records.Tests", "*TamperingTestsOn*");

    public static async Task<bool> Clients() =>
        await Run("MELTSHOP_SECONDS", 60, "MeltShop.Records.Tests", "*ManyClientsTestsOn*") & await Run("MELTSHOP_SECONDS", 60, "MeltShop.Operations.Tests", "*ManyClientsTests");

    /// <summary>The history's next page from the press to the paint, over 100,000 heats of 100 readings on each database.</summary>
    public static Task<bool> Paint() => Run("MELTSHOP_HEATS", 100_000, "MeltShop.Browser.Tests", "*HistoryPaintTests");

    private static async Task<bool> Run(string variable, int rounds, string project, string tests)
    {
        var program = Directory.GetFiles(Path.Combine("tests", project, "bin"), project + ".dll", SearchOption.AllDirectories).MaxBy(File.GetLastWriteTimeUtc);
        if (program is null)
        {
            Console.WriteLine($"tests/{project} is not built");
            return false;
        }

        var start = new ProcessStartInfo("dotnet", [program, "-class", tests, "-noColor", "-noLogo", "-failSkips", "-showLiveOutput"]) { RedirectStandardOutput = true };
        start.Environment[variable] = $"{rounds}";
        using var process = Process.Start(start)!;
        var any = false;
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            Console.WriteLine(line);
            any |= SomeTests().IsMatch(line); // a class that was renamed would else pass without a test
        }

        await process.WaitForExitAsync();
        return any && process.ExitCode == 0;
    }

    [GeneratedRegex(@"Total: [1-9]")]
    private static partial Regex SomeTests();
}

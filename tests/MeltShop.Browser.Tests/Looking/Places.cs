using System.Text.RegularExpressions;
using MeltShop.Browser.Tests.Running;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>The addresses of all pages, read from the pages themselves: one that is added is looked at without being listed.</summary>
internal static partial class Places
{
    /// <summary>Pages in a state that only a fuller address gives.</summary>
    private static readonly string[] Fuller = ["/charge?furnace=furnace-1&grade=EN-GJS-500-7&kg=6000", "/heats/999999", "/sign-in?problem=wrong", "/station?problem=wrong"];

    /// <summary>Pages of the administrator, who only reads the others.</summary>
    private static readonly string[] Administered = ["/furnaces", "/people", "/shop", "/trail"];

    public static IReadOnlyList<string> All { get; } =
    [
        .. Directory.EnumerateFiles(RunningApp.WebFolder, "*.razor", SearchOption.AllDirectories)
            .SelectMany(file => Route().Matches(File.ReadAllText(file)).Select(match => Parameter().Replace(match.Groups[1].Value, "1")))
            .Concat(Fuller).Distinct().Order(StringComparer.Ordinal),
    ];

    /// <summary>The forms that a press opens, by the name that the press gives.</summary>
    public static IReadOnlyList<string> Forms { get; } =
    [
        .. Directory.EnumerateFiles(RunningApp.WebFolder, "*.razor", SearchOption.AllDirectories)
            .SelectMany(file => Opened().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value)).Distinct().Order(StringComparer.Ordinal),
    ];

    public static bool IsAdministered(string path) => Administered.Any(page => path.StartsWith(page, StringComparison.Ordinal));

    /// <summary>The page's name for a file.</summary>
    public static string Name(string path) => path == "/" ? "floor" : Unsaid().Replace(path.Trim('/'), "-");

    [GeneratedRegex("^@page \"([^\"]+)\"", RegexOptions.Multiline)]
    private static partial Regex Route();

    [GeneratedRegex("data-opens=\"([^\"@]+)\"")]
    private static partial Regex Opened();

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Parameter();

    [GeneratedRegex("[^a-zA-Z0-9]+")]
    private static partial Regex Unsaid();
}

using System.Text.RegularExpressions;
using MeltShop.Browser.Tests.Running;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>The addresses of all pages, read from the pages themselves: one that is added is looked at without being listed.</summary>
internal static partial class Places
{
    /// <summary>Pages in a state that only a fuller address gives.</summary>
    private static readonly string[] Fuller = ["/charge?furnace=furnace-1&grade=EN-GJS-500-7&kg=6000", "/heats/999999", "/sign-in?problem=wrong"];

    public static IReadOnlyList<string> All { get; } =
    [
        .. Directory.EnumerateFiles(RunningApp.WebFolder, "*.razor", SearchOption.AllDirectories)
            .SelectMany(file => Route().Matches(File.ReadAllText(file)).Select(match => Parameter().Replace(match.Groups[1].Value, "1")))
            .Concat(Fuller).Distinct().Order(StringComparer.Ordinal),
    ];

    /// <summary>The page's name for a file.</summary>
    public static string Name(string path) => path == "/" ? "floor" : Unsaid().Replace(path.Trim('/'), "-");

    [GeneratedRegex("^@page \"([^\"]+)\"", RegexOptions.Multiline)]
    private static partial Regex Route();

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Parameter();

    [GeneratedRegex("[^a-zA-Z0-9]+")]
    private static partial Regex Unsaid();
}

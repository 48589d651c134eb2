using System.Text.RegularExpressions;

namespace MeltShop.Web.Tests.Repository;

/// <summary>What must not be in a committed text: a machine's paths, package sources, addresses of copies, tests that do not run.</summary>
public partial class WordingTests
{
    private static readonly string[] text =
    [
        ".cs", ".razor", ".css", ".js", ".json", ".md", ".csproj", ".props", ".sln", ".yml", ".sh", ".resx", ".svg", ".txt", ".conf", ".service", "/run",
        "Containerfile", "deploy/backup", "deploy/make-secrets", "config",
    ];

    // The hosts that a text may name: this machine, names reserved for examples, and those that stand in the head of an XML file or a problem document.
    private static readonly string[] namedHosts =
        ["localhost", "127.0.0.1", "0.0.0.0", "[::1]", "www.w3.org", "schemas.microsoft.com", "schemas.openxmlformats.org", "tools.ietf.org", "json.schemastore.org"];

    [GeneratedRegex(@"(?<![\w.$}])/(?:[w]ork|[r]oot|tmp/[w]t|home/\w+)/|[A-Z]:\\{1,2}Users\\")]
    private static partial Regex MachinePath();

    [GeneratedRegex(@"[s]hared/(?:design|decisions|contracts|reference)|\b(?:reference|contracts)/(?:furnace|ladle|stack|style|calculations)\.md")]
    private static partial Regex WorkingPaper();

    [GeneratedRegex(@"\b(?:https?|wss?)://(\[[^\]]*\]|[A-Za-z0-9.\-]+)")]
    private static partial Regex Address();

    [GeneratedRegex(@"\bSkip(?:When|Unless|Type)?\s*=|\bAssert\.Skip\w*\(|\bExplicit\s*=\s*true")]
    private static partial Regex TestThatDoesNotRun();

    [Fact]
    public void Text_Any_NamesNoMachinePath() => Offences.None(Matches(MachinePath(), Checkout.FilesEndingIn(text)));

    [Fact]
    public void Text_Any_CitesNoWorkingPaper() => Offences.None(Matches(WorkingPaper(), Checkout.FilesEndingIn(text)));

    [Fact]
    public void Text_Any_NamesNoHostOfTheOutsideWorld() =>
        Offences.None(
            from file in Checkout.FilesEndingIn(text)
            from line in Checkout.Lines(file)
            from Match match in Address().Matches(line)
            let host = match.Groups[1].Value
            where host.Contains('.', StringComparison.Ordinal) && !namedHosts.Contains(host) && !host.EndsWith(".example", StringComparison.Ordinal)
            select $"{file}: {host}");

    [Fact]
    public void Test_Any_IsRun() => Offences.None(Matches(TestThatDoesNotRun(), Checkout.FilesEndingIn(".cs").Where(file => file.StartsWith("tests/", StringComparison.Ordinal))));

    private static IEnumerable<string> Matches(Regex pattern, IEnumerable<string> files) =>
        from file in files
        from line in Checkout.Lines(file).Select((content, index) => (content, number: index + 1))
        where pattern.IsMatch(line.content)
        select $"{file}:{line.number}: {line.content.Trim()}";
}

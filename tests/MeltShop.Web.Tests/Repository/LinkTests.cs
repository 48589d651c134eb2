using System.Text.RegularExpressions;

namespace MeltShop.Web.Tests.Repository;

public partial class LinkTests
{
    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"<!--.*?-->", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"[^\w\- ]")]
    private static partial Regex NotInAnchor();

    [GeneratedRegex("""<a (?:id|name)="([^"]+)">""")]
    private static partial Regex NamedAnchor();

    [Fact]
    public void Link_InADocument_LeadsSomewhere() =>
        Offences.None(
            from document in Checkout.FilesEndingIn(".md")
            from Match match in Link().Matches(Comment().Replace(Checkout.Read(document), ""))
            let target = match.Groups[1].Value
            where !target.Contains("://", StringComparison.Ordinal) && !Leads(document, target)
            select $"{document}: {target}");

    private static bool Leads(string document, string target)
    {
        var parts = target.Split('#', 2);
        var path = parts[0].Length == 0 ? document : Committed(Path.Combine(Path.GetDirectoryName(document) ?? "", parts[0]));
        return parts.Length == 1
            ? Checkout.Files.Any(file => file == path || file.StartsWith(path + '/', StringComparison.Ordinal))
            : Checkout.Files.Contains(path) && Anchors(path).Contains(parts[1]);
    }

    // A folder without a committed file would be there on this machine only.
    private static string Committed(string path) =>
        Path.GetRelativePath(Checkout.Root, Path.GetFullPath(Path.Combine(Checkout.Root, path))).Replace('\\', '/').TrimEnd('/');

    private static IEnumerable<string> Anchors(string path) =>
        Checkout.Lines(path).SelectMany(line => line.StartsWith('#')
            ? [NotInAnchor().Replace(line.TrimStart('#').Trim(), "").Replace(' ', '-').ToLowerInvariant()]
            : NamedAnchor().Matches(line).Select(match => match.Groups[1].Value));
}

namespace MeltShop.Web.Tests.Repository;

/// <summary>Small files that do one thing: what the guide for developers promises. Generated migrations are nobody's to read.</summary>
public class SizeTests
{
    private const int MostLines = 400;
    private const int MostMarkupLines = 120;
    private const int MostCodeBlockLines = 15;
    private const int MedianLines = 60;

    private static IEnumerable<string> Written(params string[] endings) =>
        Checkout.FilesEndingIn(endings).Where(file => !file.Contains("/Migrations/", StringComparison.Ordinal));

    [Fact]
    public void SourceFile_Any_HasAtMost400Lines() =>
        Offences.None(
            from file in Written(".cs", ".razor", ".css", ".js", ".sh")
            let lines = Checkout.Lines(file).Length
            where lines > MostLines
            select $"{file}: {lines} lines");

    [Fact]
    public void Markup_Any_HasAtMost120Lines() =>
        Offences.None(
            from file in Written(".razor")
            let lines = Checkout.Lines(file).Length
            where lines > MostMarkupLines
            select $"{file}: {lines} lines");

    [Fact]
    public void CodeBlock_InMarkup_HasAtMost15Lines() =>
        Offences.None(
            from file in Written(".razor")
            let lines = Checkout.Lines(file).SkipWhile(line => !line.StartsWith("@code", StringComparison.Ordinal)).Count()
            where lines > MostCodeBlockLines
            select $"{file}: a code block of {lines} lines");

    [Fact]
    public void SourceFiles_Together_HaveAMedianOfAtMost60Lines()
    {
        var lines = Written(".cs").Where(file => file.StartsWith("src/", StringComparison.Ordinal))
            .Select(file => Checkout.Lines(file).Length).Order().ToList();

        Assert.InRange(lines[lines.Count / 2], 1, MedianLines);
    }
}

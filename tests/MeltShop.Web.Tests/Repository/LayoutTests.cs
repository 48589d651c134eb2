namespace MeltShop.Web.Tests.Repository;

public class LayoutTests
{
    private static readonly HashSet<string> allowed =
    [
        "README.md", "DEVELOPERS.md", "LICENSE", "MeltShop.sln", "src", "tests", "docs", "deploy", "docker-compose.yml",
        "Directory.Build.props", "Directory.Packages.props", "global.json", "BannedSymbols.txt",
        ".ci", ".config", ".dockerignore", ".editorconfig", ".gitattributes", ".gitignore",
    ];

    [Fact]
    public void TopLevel_OfTheRepository_HoldsOnlyWhatBelongsThere()
    {
        var entries = Checkout.Files.Select(file => file.Split('/')[0]).Distinct();

        Offences.None(entries.Where(entry => !allowed.Contains(entry)));
    }

    [Fact]
    public void TestCommands_OfTheRepository_AreThere()
    {
        Assert.Contains("tests/run", Checkout.Files);
        Assert.Contains(".ci/run", Checkout.Files);
        Assert.Contains("tests/run", Checkout.Read(".ci/run"), StringComparison.Ordinal);
    }
}

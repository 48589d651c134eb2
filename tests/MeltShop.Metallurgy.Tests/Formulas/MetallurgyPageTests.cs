namespace MeltShop.Metallurgy.Tests.Formulas;

public class MetallurgyPageTests
{
    [Fact]
    public void Page_InTheDocs_IsWhatTheRecordsGive()
    {
        var path = Path.Combine(Root(), "docs", "METALLURGY.md");
        if (Environment.GetEnvironmentVariable("MELTSHOP_WRITE_DOCS") == "1") File.WriteAllText(path, MetallurgyPage.Text());

        Assert.Equal(MetallurgyPage.Text(), File.ReadAllText(path));
    }

    [Fact]
    public void Page_EveryFormula_NamesATestClassThatIsThere()
    {
        var classes = typeof(MetallurgyPageTests).Assembly.GetTypes().Select(t => t.Name).ToHashSet();

        Assert.Equal(Metallurgy.Formulas.Catalogue.All.Select(f => f.Key).Order(), MetallurgyPage.Tests.Keys.Order());
        Assert.All(MetallurgyPage.Tests.Values, name => Assert.Contains(name, classes));
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "MeltShop.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The solution's folder was not found above the test.");
    }
}

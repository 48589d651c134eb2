using MeltShop.Web.Demo;

namespace MeltShop.Web.Tests.Repository;

public class ReadmeTests
{
    private static string Readme { get; } = Checkout.Read("README.md");

    [Fact]
    public void Readme_FirstParagraph_StatesTheJobBeforeTheCommands()
    {
        Assert.InRange(Readme.IndexOf("induction furnace", StringComparison.Ordinal), 0, Readme.IndexOf("##", StringComparison.Ordinal));
        Assert.Contains("dotnet run --project src/MeltShop.Web\n", Readme, StringComparison.Ordinal);
        Assert.Contains("tests/run\n", Readme, StringComparison.Ordinal);
    }

    [Fact]
    public void DemoPeople_All_AreNamedWithTheirRole() =>
        Offences.None(
            from person in DemoCatalogue.Load().People
            where !Readme.Contains($"| `{person.UserName}` | {person.Role} |", StringComparison.Ordinal)
            select $"{person.UserName}, {person.Role}");

    [Fact]
    public void DemoPassword_InTheReadme_IsTheOneThatWorks() =>
        Assert.Contains($"whose password is {DemoFoundry.Password}", Readme, StringComparison.Ordinal);
}

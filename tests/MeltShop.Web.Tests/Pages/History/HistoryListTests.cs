using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.History;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Tests.Pages.History;

public sealed class HistoryListTests : DemoShopTest
{
    [Fact]
    public void History_Opened_ShowsTheHeatWithItsLadlesAndLeadsToIt()
    {
        var row = Open("/history").Find("tr[data-heat]");

        Assert.Contains("EN-GJS-500-7", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("Furnace 1", row.QuerySelector("[data-heading=Furnace]")!.TextContent, StringComparison.Ordinal); // its name, not its code
        Assert.Equal(2, row.QuerySelectorAll(".designation").Length); // its number and its grade, which are not torn apart
        Assert.Contains("3 released", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("1 held", row.QuerySelector(".tag-watch")!.TextContent, StringComparison.Ordinal);
        Assert.StartsWith("/heats/", row.QuerySelector("a")!.GetAttribute("href"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/history?number=0001", true)]
    [InlineData("/history?number=0002", false)]
    [InlineData("/history?state=Closed", true)]
    [InlineData("/history?state=Tapping", false)]
    [InlineData("/history?verdict=Release", true)]
    [InlineData("/history?verdict=Scrap", false)]
    [InlineData("/history?from=2020-01-01&to=2020-12-31", false)]
    [InlineData("/history?from=2020-01-01", true)]
    [InlineData("/history?from=0001-01-01&to=9999-12-31", true)]
    public void History_FilterInTheAddress_ShowsOnlyWhatFits(string address, bool isFound)
    {
        var page = Open(address);

        Assert.Equal(isFound ? 1 : 0, page.FindAll("tr[data-heat]").Count);
        Assert.Equal(isFound ? 0 : 1, page.FindAll("[data-testid=nothing-found]").Count);
    }

    [Fact]
    public void History_FilterChosen_GoesIntoTheAddressAndLeavesThePlace()
    {
        var page = Open("/history?after=1-1");
        page.Do(() => page.FindAll("select")[2].ChangeAsync("Closed"));

        Assert.Equal("?state=Closed", new Uri(The<NavigationManager>().Uri).Query);
    }

    [Fact]
    public void History_MangledPlace_ShowsTheNewest()
    {
        Assert.Single(Open("/history?after=yesterday").FindAll("tr[data-heat]"));
    }

    [Fact]
    public void History_InThePseudoLanguage_HasNoWordOutsideItsTexts()
    {
        Speak(PseudoLanguage.Culture);
        var page = Open("/history");
        var row = page.Find("tr[data-heat]").QuerySelectorAll("td");

        Assert.Empty(Marks.WordsOutside(page.Nodes,
        [
            DemoHeatNumber, "furnace-1", .. row.Skip(3).Take(2).Select(cell => cell.TextContent.Trim()),
            .. page.FindAll("select option").Select(option => option.TextContent).Where(text => text.StartsWith("EN-", StringComparison.Ordinal) || text.StartsWith("Furnace ", StringComparison.Ordinal)),
            "EN-GJS-500-7",
        ]));
    }

    private IRenderedComponent<HistoryList> Open(string address)
    {
        SignIn(Role.Supervisor);
        The<NavigationManager>().NavigateTo(address);
        var page = Render<HistoryList>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        return page;
    }
}

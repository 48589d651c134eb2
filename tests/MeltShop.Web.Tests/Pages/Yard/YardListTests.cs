using Bunit;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Web.Pages.Yard;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Pages.Yard;

public sealed class YardListTests : YardTest
{
    [Fact]
    public void Yard_Opened_ShowsEveryMaterialByKind()
    {
        var page = Open("/yard");

        Assert.Equal(3, page.FindAll("[data-material]").Count);
        Assert.Equal(["Returns", "Steel scrap", "Pig iron"], page.FindAll("th.group").Select(group => group.TextContent));
    }

    [Fact]
    public void Yard_Material_ShowsScatterSourcePriceAndDemoMark()
    {
        var row = Open("/yard").Find("[data-material=plate]");

        Assert.Contains("±0.25", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("Mo\u00a00.01", row.QuerySelector(".others")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("330.00", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("never counted", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("from memory", row.QuerySelector("[data-source=memory]")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(row.QuerySelector(".tag[title]"));
    }

    [Fact]
    public void Yard_FilterInTheAddress_ShowsOnlyWhatFits()
    {
        var page = Open("/yard?kind=PigIron&text=low");

        Assert.Equal(["pig-low"], page.FindAll("[data-material]").Select(row => row.GetAttribute("data-material")));
        Assert.EndsWith("?kind=PigIron&text=low", page.Find(".row-link").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public void Yard_FilterChosen_GoesIntoTheAddress()
    {
        var page = Open("/yard");
        page.Find("select").Change("Returns");

        Assert.Equal("?kind=Returns", new Uri(Services.GetRequiredService<NavigationManager>().Uri).Query);
    }

    [Fact]
    public async Task Yard_WhereAnythingMayHaveChangedUnheard_IsReadAgain()
    {
        var page = Open("/yard");
        await using (var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation))
            await db.Materials.Where(m => m.Id == PlateId).ExecuteUpdateAsync(set => set.SetProperty(m => m.Name, "Plate, cut"), Cancellation);

        The<ChangeNotices>().Publish(ChangeNotice.Anything);

        page.WaitForState(() => page.Find("[data-material=plate]").TextContent.Contains("Plate, cut", StringComparison.Ordinal));
    }

    [Fact]
    public void Yard_NothingFits_OffersTheWayBack()
    {
        var page = Open("/yard?text=nickel");

        Assert.NotNull(page.Find("[data-testid=nothing-found]"));
        Assert.Equal("/yard", page.Find("a.press").GetAttribute("href"));
    }

    [Fact]
    public void Yard_InThePseudoLanguage_HasNoWordOutsideItsTexts()
    {
        Speak(PseudoLanguage.Culture);
        var page = Open("/yard");

        Assert.Empty(Marks.WordsOutside(
            page.Nodes, "Plate offcuts", "plate", "Pig iron, low manganese", "pig-low", "Returns 500-7", "returns-500", "Si", "Mn", "Cr", "Cu", "Mg", "Mo", "C", "P", "S"));
        Assert.Equal(3, page.FindAll("[data-material]").Count);
    }

    private IRenderedComponent<YardList> Open(string address)
    {
        SignIn(Role.Melter);
        Services.GetRequiredService<NavigationManager>().NavigateTo(address);
        var page = Render<YardList>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        return page;
    }
}

using Bunit;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Trail;
using MeltShop.Records.Writing;
using MeltShop.Web.Pages.Trail;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;

namespace MeltShop.Web.Tests.Pages.Trail;

public sealed class TrailListTests : DemoShopTest
{
    [Fact]
    public void Trail_Opened_ShowsTheLatestEntriesAndLeadsToOlderOnes()
    {
        var page = Opened(Role.Inspector);

        Assert.Equal(TrailPage.PageSize, page.FindAll("tr[data-entry]").Count);
        Assert.StartsWith("/trail?before=", page.Find("[data-testid=older]").GetAttribute("href"), StringComparison.Ordinal);
        Assert.DoesNotContain(page.FindAll("tr[data-entry] summary"), what => Operations.OperationsServices.All.Any(o => o.Name == what.TextContent));
    }

    [Fact]
    public void Trail_OfSomebodyWithoutTheRight_IsNotShown()
    {
        SignIn(Role.Melter, Role.Metallurgist);
        var page = Render<TrailList>();
        page.WaitForState(() => page.FindAll("[data-state=missing]").Count > 0);

        Assert.Empty(page.FindAll("tr[data-entry]"));
        Assert.Equal(TrailPage.Roles.Order(), TrailList.Readers.Split(',').Order());
    }

    [Fact]
    public async Task Check_OfTheWholeTrail_HoldsAndPassesThroughAnEndThatWasPrinted()
    {
        var printed = await The<TrailCheck>().Run(Cancellation);
        var page = Opened(Role.Supervisor);

        page.Find("[data-testid=check] input").Change(new TrailMark(printed.Entries, printed.HeadHash[..20]).ToString());
        await page.Find("[data-testid=check] form").SubmitAsync();
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("[data-testid=holds]")));

        Assert.Equal($"{printed.Entries}-{printed.HeadHash}", page.Find("[data-testid=end]").TextContent);
    }

    [Fact]
    public async Task Check_WithAnEndThatNeverWas_SaysSo()
    {
        var page = Opened(Role.Administrator);

        page.Find("[data-testid=check] input").Change("1-aaaaaaaaaaaaaaaaaaaa");
        await page.Find("[data-testid=check] form").SubmitAsync();
        page.WaitForAssertion(() => Assert.Contains("does not pass", page.Find("[data-testid=check]").TextContent, StringComparison.Ordinal));

        page.Find("[data-testid=check] input").Change("an end");
        await page.Find("[data-testid=check] form").SubmitAsync();
        Assert.NotEmpty(page.FindAll("[data-testid=mark-unknown]"));
    }

    [Fact]
    public async Task Trail_InThePseudoLanguage_HasNoWordOfItsOwn()
    {
        Speak(PseudoLanguage.Culture);
        var page = Opened(Role.Supervisor);
        await page.Find("[data-testid=check] form").SubmitAsync();
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("[data-testid=holds]")));

        var data = page.FindAll("pre, td, summary").Select(cell => cell.TextContent.Trim()).Where(text => text.Length > 0);
        Assert.Empty(Marks.WordsOutside(page.Nodes, [.. data]));
    }

    private IRenderedComponent<TrailList> Opened(string role)
    {
        SignIn(role);
        var page = Render<TrailList>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        return page;
    }
}

using Bunit;
using MeltShop.Operations.Sites;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Charge;

namespace MeltShop.Web.Tests.Pages.Charge;

public sealed class ChargeGapsTests : ShopTest
{
    protected override Task Prepare() => Task.CompletedTask;

    [Fact]
    public void Charge_NothingThereYet_SaysWhatIsMissingAndWhereToEnterIt()
    {
        var page = Open();

        Assert.Equal(["The shop is not set up yet", "No furnace yet", "No grade yet", "Nothing to charge yet"], page.FindAll(".notice-heading").Select(heading => heading.TextContent));
        Assert.Equal(["/shop", "/furnaces", "/grades", "/yard"], page.FindAll(".notice a").Select(link => link.GetAttribute("href")));
    }

    [Fact]
    public async Task Charge_FurnaceOnly_NamesTheRest()
    {
        await The<SetUpSite>().Run(Founder, new(Guid.NewGuid(), Now, "T", "Test foundry", "Europe/Berlin", "EUR"), Cancellation);
        await The<AddFurnace>().Run(Founder, new(Guid.NewGuid(), Now, "F1", "Furnace 1", 3000, 1800), Cancellation);

        Assert.Equal(["No grade yet", "Nothing to charge yet"], Open().FindAll(".notice-heading").Select(heading => heading.TextContent));
    }

    private IRenderedComponent<ChargePlanning> Open()
    {
        SignIn(Role.Melter);
        var page = Render<ChargePlanning>();
        page.WaitForState(() => page.FindAll("[data-state=empty]").Count > 0);
        return page;
    }
}

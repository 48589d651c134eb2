using Bunit;
using MeltShop.Operations.Sites;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Floor;

namespace MeltShop.Web.Tests.Pages.Floor;

public sealed class EmptyFloorTests : ShopTest
{
    protected override async Task Prepare() =>
        Assert.True((await The<SetUpSite>().Run(Founder, new(Guid.NewGuid(), Now, "TB", "Talbrück", "Europe/Berlin", "EUR"), Cancellation)).Succeeded);

    [Fact]
    public void Floor_NoFurnace_SaysWhoSetsItUp()
    {
        SignIn(Role.Melter);
        var page = Render<ShopFloor>();

        page.WaitForState(() => page.FindAll("[data-state=empty]").Count > 0);
        Assert.Equal("No furnace yet", page.Find(".notice-heading").TextContent);
        Assert.Equal("/furnaces", page.Find(".notice a").GetAttribute("href"));
    }
}

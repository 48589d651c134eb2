using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Floor;

namespace MeltShop.Web.Tests.Pages.Floor;

public sealed class EmptyFloorTests : ShopTest
{
    protected override Task Prepare() => Task.CompletedTask;

    [Fact]
    public void Floor_NoFurnace_SaysWhoSetsItUp()
    {
        SignIn(Role.Melter);
        var page = Render<ShopFloor>();

        page.WaitForState(() => page.FindAll("[data-state=empty]").Count > 0);
        Assert.Equal("No furnace yet", page.Find(".notice-heading").TextContent);
    }
}

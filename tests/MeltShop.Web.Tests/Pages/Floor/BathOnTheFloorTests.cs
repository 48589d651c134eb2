using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Floor;
using MeltShop.Web.Tests.Pages.Ladles;

namespace MeltShop.Web.Tests.Pages.Floor;

public sealed class BathOnTheFloorTests : LadleTest
{
    [Fact]
    public async Task Floor_AfterASampleOfTheLadle_StillJudgesTheBath()
    {
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        await LastMetal(id, 0.042);
        SignIn(Role.Melter);
        var page = Render<ShopFloor>();
        page.WaitForState(() => page.FindAll("[data-furnace=furnace-1] .ribbon").Count > 0, Patience);

        // The treated iron has a percent of silicon more than the furnace window allows; the bath has not.
        Assert.DoesNotContain("Si ", page.Find("[data-furnace=furnace-1]").TextContent, StringComparison.Ordinal);
        Assert.Contains("taken at", page.Find("[data-furnace=furnace-1]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Floor_WithAHeat_SaysHowLongItHasBeenInItsStep()
    {
        var start = Now;
        Clock.At = start.AddMinutes(31);
        await BathSample();
        Clock.At = start.AddMinutes(47);
        SignIn(Role.Melter);
        var page = Render<ShopFloor>();

        page.WaitForAssertion(() => Assert.Equal("16\u00a0min", page.Find("[data-furnace=furnace-1] [aria-current=step] .ribbon-minutes").TextContent.Trim()));
    }
}

using Bunit;
using MeltShop.Operations.Charging;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Charge;
using MeltShop.Web.Pages.Floor;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;

namespace MeltShop.Web.Tests.Pages.Floor;

public sealed class ShopFloorTests : DemoShopTest
{
    [Theory]
    [InlineData(Role.Inspector, true)]
    [InlineData(Role.Supervisor, true)]
    [InlineData(Role.Melter, false)]
    public void Floor_HeldCastings_WaitForThoseWhoDecide(string role, bool wait)
    {
        SignIn(role);
        var page = Render<ShopFloor>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);

        Assert.Equal(wait ? 1 : 0, page.FindAll("[data-waiting=Decision]").Count);
        Assert.Equal(wait ? 0 : 1, page.FindAll("[data-testid=nothing-waits]").Count);
        if (wait) Assert.StartsWith("/ladles/", page.Find("[data-waiting=Decision]").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public void Floor_AfterAHeat_ShowsTheHeelAndTheHeldCastings()
    {
        var page = Open();

        Assert.Equal(3, page.FindAll("[data-furnace]").Count);
        Assert.Matches("[56][0-9]{2}\u00a0kg", page.Find("[data-furnace=furnace-1] .live").TextContent);
        Assert.StartsWith("/ladles/", page.Find("[data-testid=held]").GetAttribute("href"), StringComparison.Ordinal);
        Assert.StartsWith("/charge?furnace=", page.Find("[data-furnace=furnace-1] a.press").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Floor_HeatStartedByAnother_ShowsItWithoutReload()
    {
        var page = Open();
        var view = await The<ChargePage>().Load(Cancellation);
        var (furnace, grade) = (view.Furnaces.Single(f => f.Code == "furnace-2"), view.Grades.Single(g => g.Code == "EN-GJL-250"));
        var plan = await The<PlanCharge>().Run(Founder, new(Guid.NewGuid(), Now, new(furnace.Id, grade.Id, 5000)), Cancellation);
        var heat = await The<StartHeat>().Run(Founder, new(Guid.NewGuid(), Now, plan.Value.PlanId), Cancellation);

        page.WaitForState(() => page.FindAll("[data-furnace=furnace-2] .ribbon").Count > 0);
        Assert.Contains(heat.Value.Number, page.Find("[data-furnace=furnace-2]").TextContent, StringComparison.Ordinal);
        Assert.Contains("Charging", page.Find("[aria-current=step]").TextContent, StringComparison.Ordinal);
        Assert.Contains("not measured", page.Find("[data-furnace=furnace-2]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Floor_InThePseudoLanguage_HasNoWordOutsideItsTexts()
    {
        Speak(PseudoLanguage.Culture);

        Assert.Empty(Marks.WordsOutside(Open().Nodes, "Furnace 1", "Furnace 2", "Furnace 3", "kg", "EN-GJS-500-7", DemoHeatNumber));
    }

    private IRenderedComponent<ShopFloor> Open()
    {
        SignIn(Role.Melter);
        var page = Render<ShopFloor>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        return page;
    }
}

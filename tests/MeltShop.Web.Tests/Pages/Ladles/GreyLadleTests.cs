using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Ladles;

namespace MeltShop.Web.Tests.Pages.Ladles;

public sealed class GreyLadleTests : LadleTest
{
    protected override string GradeCode => "EN-GJL-250";

    [Fact]
    public async Task GreyIron_HasNoMagnesiumOnItsCardAndPoursWithTheTap()
    {
        await BathSample();
        SignIn(Role.Melter);
        var preparation = Render<LadlePreparation>(parameters => parameters.Add(p => p.HeatId, HeatId));
        preparation.WaitForState(() => preparation.FindAll("[data-state=ready]").Count > 0, Patience);
        preparation.Find("[data-field=temperatureC] input").Change("1450");
        preparation.Find("[data-field=plannedKg] input").Change("800");
        preparation.WaitForState(() => preparation.FindAll("[data-testid=stop-weight]").Count > 0, Patience);
        Assert.Empty(preparation.FindAll("[data-testid=alloy-kg]"));
        Assert.Empty(preparation.FindAll("[data-field=targetMgPercent]"));

        Assert.Empty(preparation.FindAll("[data-testid=recipe] [data-field=minutesToLastMould]"));
        Assert.Equal("Ladle card", preparation.Find("[data-testid=pocket-card] h2").TextContent);
        Assert.Contains("Inoculant dry", preparation.Find("label:has([data-check=Alloy])").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("reatment", preparation.Find("[data-testid=pocket-form]").TextContent, StringComparison.Ordinal);

        var id = await Prepared();
        await Tap(id, 810);
        var page = Render<LadleDetail>(parameters => parameters.Add(p => p.Id, id));
        page.WaitForState(() => page.FindAll("[data-ladle-state=Pouring]").Count > 0, Patience);
        Assert.Empty(page.FindAll("[data-testid=mg-curve]"));
        Assert.Empty(page.FindAll("[data-testid=reaction-ended]"));
        Assert.Empty(page.FindAll("[data-limit=Magnesium], [data-missing=Magnesium]"));
        Assert.Equal(
            ["DampGrey", "Freeboard", "LeftOver", "Carbide", "Decides"],
            page.FindAll("[data-testid=ladle-cautions] [data-caution]").Select(caution => caution.GetAttribute("data-caution")));
        Assert.Equal("Ladle card", page.Find("[data-testid=ladle-card] h2").TextContent);
        Assert.DoesNotContain("reated", page.Find("[data-testid=last-metal]").TextContent, StringComparison.Ordinal);
        Assert.Equal("0.C", page.Find("[data-testid=last-metal-form] [data-cell]").GetAttribute("data-cell"));
    }
}

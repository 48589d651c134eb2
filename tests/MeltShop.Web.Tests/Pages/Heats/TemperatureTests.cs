using Bunit;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Sites;

namespace MeltShop.Web.Tests.Pages.Heats;

public sealed class TemperatureTests : HeatTest
{
    [Fact]
    public async Task Temperature_Saved_IsShownAndInTheTimeline()
    {
        var page = Open();
        Type(page, "temperature-form", "temperatureC", "1487,5");
        await page.Find("[data-testid=temperature-form]").SubmitAsync();

        page.WaitForAssertion(() => Assert.Contains("1487.5\u00a0°C", page.Find("[data-testid=figures]").TextContent, StringComparison.Ordinal), Patience);
        Assert.Contains("bath at 1487.5\u00a0°C", page.Find("[data-testid=timeline]").TextContent, StringComparison.Ordinal);
        Assert.Equal(1487.5, Assert.Single((await Heat()).Temperatures).TemperatureC);
    }

    [Fact]
    public async Task Temperature_TypedForAHeat_DoesNotStandInTheFieldOfAnother()
    {
        var furnace = await The<AddFurnace>().Run(Founder, new(Guid.NewGuid(), Now, "F2", "Furnace 2", 3000, 1800), Cancellation);
        var plan = await The<PlanCharge>().Run(Founder, new(Guid.NewGuid(), Now, new ChargeChoice(furnace.Value, GradeId, 2000)), Cancellation);
        var other = (await The<StartHeat>().Run(Founder, new(Guid.NewGuid(), Now, plan.Value.PlanId), Cancellation)).Value;
        var page = Open();
        Type(page, "temperature-form", "temperatureC", "1487");
        page.Render(p => p.Add(x => x.HeatId, other.HeatId));

        page.WaitForAssertion(() => Assert.Contains(other.Number, page.Find("h1").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal("", Field(page, "temperature-form", "temperatureC").QuerySelector("input")!.GetAttribute("value") ?? "");
    }

    [Theory]
    [InlineData("148", "number.tooSmall")]
    [InlineData("14850", "number.tooLarge")]
    [InlineData("hot", "number.notANumber")]
    public async Task Temperature_Wrong_IsToldAtItsField(string typed, string code)
    {
        var page = Open();
        Type(page, "temperature-form", "temperatureC", typed);
        await page.Find("[data-testid=temperature-form]").SubmitAsync();

        Assert.Equal(code, Error(page, "temperature-form", "temperatureC"));
        Assert.Empty((await Heat()).Temperatures);
    }
}

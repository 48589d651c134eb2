using Bunit;
using MeltShop.Web.Pages.Heats;

namespace MeltShop.Web.Tests.Pages.Heats;

public sealed class SuperheatTests : HeatTest
{
    [Theory]
    [InlineData(1529.9, 1560.0, Superheat.Clear)]
    [InlineData(1530, 1560.0, Superheat.Near)]
    [InlineData(1560, 1560.0, Superheat.Near)]
    [InlineData(1560.1, 1560.0, Superheat.Over)]
    [InlineData(1700, null, Superheat.Clear)]
    public void SuperheatLimit_AroundTheFurnacesHighest_IsNamed(double temperatureC, double? highestC, Superheat expected) =>
        Assert.Equal(expected, SuperheatLimit.Of(temperatureC, highestC));

    [Theory]
    [InlineData("1500", null)]
    [InlineData("1545", "Near")]
    [InlineData("1571", "Over")]
    public async Task Temperature_NearTheFurnacesHighest_NamesTheLimitBesideTheReading(string typed, string? mark)
    {
        var page = Open();
        Type(page, "temperature-form", "temperatureC", typed);
        await page.Find("[data-testid=temperature-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=temperatures] .readings li").Count == 1, Patience);

        Assert.Equal(mark, page.FindAll("[data-superheat]").SingleOrDefault()?.GetAttribute("data-superheat"));
        if (mark is not null) Assert.Contains("1560\u00a0°C", page.Find("[data-superheat]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Heat_InTheFurnace_ShowsTheCautionsOfTheFurnace()
    {
        var page = Open();

        Assert.Equal(
            ["PowerOff", "Alarm", "RunOut", "Gas", "Superheat"],
            page.FindAll("[data-testid=furnace-cautions] [data-caution]").Select(caution => caution.GetAttribute("data-caution")));
        Assert.Contains("1560\u00a0°C", page.Find("[data-caution=Superheat]").TextContent, StringComparison.Ordinal);
        Assert.Contains("a qualified person decide", page.Find("[data-testid=furnace-cautions]").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[data-testid=furnace-cautions] input, [data-testid=furnace-cautions] button"));
    }
}

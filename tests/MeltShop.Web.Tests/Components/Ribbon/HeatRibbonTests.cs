using Bunit;
using MeltShop.Web.Components.Ribbon;

namespace MeltShop.Web.Tests.Components.Ribbon;

public sealed class HeatRibbonTests : ComponentTest
{
    [Fact]
    public void Drawn_Steps_HaveMarkWordAndMinutes()
    {
        var steps = Draw().FindAll("li");

        Assert.Equal(["✓ Charging done 42 min", "▶ Bath 7 min", "· Tapping later"], steps.Select(step => string.Join(' ', step.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))));
        Assert.Equal([null, "step", null], steps.Select(step => step.GetAttribute("aria-current")));
    }

    [Fact]
    public void Drawn_MinutesUnknown_SaysNone() => Assert.Null(Draw().FindAll("li")[2].QuerySelector(".ribbon-minutes"));

    [Fact]
    public void Heard_Steps_AreAListInOrderWithTheirStandingInWords()
    {
        var ribbon = Draw();

        Assert.Equal(("OL", "Steps"), (ribbon.Find("[data-testid=steps]").TagName, ribbon.Find("[data-testid=steps]").GetAttribute("aria-label")));
        Assert.All(ribbon.FindAll("li > span:first-child"), mark => Assert.Equal("true", mark.GetAttribute("aria-hidden")));
        Assert.Equal(["done", "later"], ribbon.FindAll(".unseen").Select(word => word.TextContent.Trim())); // the running one is "current step"
        Assert.Empty(ribbon.FindAll("[tabindex], button, a")); // shows, and takes no key
    }

    private IRenderedComponent<HeatRibbon> Draw() => Render<HeatRibbon>(parameters => parameters
        .Add(p => p.Label, "Steps")
        .Add(p => p.Steps, [new("Charging", RibbonStanding.Done, 42.9), new("Bath", RibbonStanding.Now, 7), new("Tapping", RibbonStanding.Later)]));
}

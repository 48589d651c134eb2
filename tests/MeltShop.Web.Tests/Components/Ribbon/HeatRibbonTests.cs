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

    private IRenderedComponent<HeatRibbon> Draw() => Render<HeatRibbon>(parameters => parameters
        .Add(p => p.Label, "Steps")
        .Add(p => p.Steps, [new("Charging", RibbonStanding.Done, 42.9), new("Bath", RibbonStanding.Now, 7), new("Tapping", RibbonStanding.Later)]));
}

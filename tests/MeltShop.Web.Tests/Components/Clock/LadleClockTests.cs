using Bunit;
using MeltShop.Web.Components.Clock;

namespace MeltShop.Web.Tests.Components.Clock;

public sealed class LadleClockTests : ComponentTest
{
    private static readonly DateTimeOffset End = new(2026, 3, 2, 6, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Drawn_WithAnEnd_HandsTheServersInstantsToTheBrowser()
    {
        var clock = Draw(End.AddMinutes(12)).Find("ladle-clock");

        Assert.Equal("1772431200000", clock.GetAttribute("data-end"));
        Assert.Equal("1772431920000", clock.GetAttribute("data-stop"));
        Assert.Equal("1772431380000", clock.GetAttribute("data-now"));
        Assert.Equal("timer", clock.GetAttribute("role"));
        Assert.Equal("off", clock.GetAttribute("aria-live"));
    }

    [Fact]
    public void Drawn_WithoutAnEnd_HasNone() => Assert.Null(Draw(null).Find("ladle-clock").GetAttribute("data-stop"));

    private IRenderedComponent<LadleClock> Draw(DateTimeOffset? until) => Render<LadleClock>(parameters => parameters
        .Add(p => p.Label, "Ladle 1").Add(p => p.Since, End).Add(p => p.Until, until).Add(p => p.Now, End.AddMinutes(3)));
}

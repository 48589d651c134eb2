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

    [Fact]
    public void Drawn_LargeWithABand_HandsTheBandOverAndGivesSignals()
    {
        var clock = Render<LadleClock>(parameters => parameters.Add(p => p.Label, "Ladle 1").Add(p => p.Since, End).Add(p => p.Early, End.AddMinutes(2))
            .Add(p => p.Until, End.AddMinutes(12)).Add(p => p.Now, End.AddMinutes(3)).Add(p => p.IsLarge, true)).Find("ladle-clock");

        Assert.Equal("1772431320000", clock.GetAttribute("data-early"));
        Assert.True(clock.HasAttribute("data-signals"));
        Assert.Equal("Ladle 1", clock.GetAttribute("aria-label"));
    }

    [Fact]
    public void Drawn_Small_GivesNoSignals() => Assert.False(Draw(End.AddMinutes(12)).Find("ladle-clock").HasAttribute("data-signals"));

    [Fact]
    public void Drawn_InALanguage_HandsItsWordsOverForThoseWhoHearIt()
    {
        var clock = Draw(End.AddMinutes(12)).Find("ladle-clock");

        Assert.Equal(
            ["since the end of the reaction", "left", "too late"],
            new[] { "data-since", "data-left", "data-over" }.Select(word => clock.GetAttribute(word)));
        Assert.False(clock.HasAttribute("tabindex")); // nothing to press
    }

    private IRenderedComponent<LadleClock> Draw(DateTimeOffset? until) => Render<LadleClock>(parameters => parameters
        .Add(p => p.Label, "Ladle 1").Add(p => p.Since, End).Add(p => p.Until, until).Add(p => p.Now, End.AddMinutes(3)));
}

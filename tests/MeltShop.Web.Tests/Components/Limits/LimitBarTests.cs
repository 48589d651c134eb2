using Bunit;
using MeltShop.Web.Components.Limits;

namespace MeltShop.Web.Tests.Components.Limits;

public sealed class LimitBarTests : ComponentTest
{
    [Theory]
    [InlineData(0.30, 0.0, "in", "✓ in")]
    [InlineData(0.50, 0.0, "high", "▲ high")]
    [InlineData(0.10, 0.0, "low", "▼ low")]
    [InlineData(0.39, 0.02, "close", "≈ too close to tell")]
    public void Drawn_Value_HasMarkAndWord(double value, double doubt, string state, string words)
    {
        var bar = Draw(value, doubt);

        Assert.Equal(state, bar.Find(".limit").GetAttribute("data-verdict"));
        Assert.Equal(words, bar.Find(".limit-verdict").TextContent.Trim());
    }

    [Fact]
    public void Drawn_NotMeasured_SaysSoAndShowsNoMarkOnTheBar()
    {
        var bar = Draw(null, 0);

        Assert.Contains("not measured", bar.Find(".limit-verdict").TextContent, StringComparison.Ordinal);
        Assert.Empty(bar.FindAll(".limit-mark"));
        Assert.Equal("–", bar.Find(".limit-value").TextContent);
    }

    [Fact]
    public void Drawn_JustOver_PrintsEnoughDecimals() => Assert.Equal("0.404\u00a0%", Draw(0.404, 0).Find(".limit-value").TextContent);

    [Theory]
    [InlineData(0.005, "0.005\u00a0%")]
    [InlineData(0.058, "0.06\u00a0%")]
    public void Drawn_FarBelowItsMost_IsNotRoundedToSomethingElse(double value, string words)
    {
        var bar = Render<LimitBar>(parameters => parameters.Add(p => p.Quantity, "Cr").Add(p => p.Most, 0.08).Add(p => p.Value, value));

        Assert.Equal(words, bar.Find(".limit-value").TextContent);
    }

    [Fact]
    public void Drawn_WithScatterAndRepeatability_ShowsEachAndJudgesByTheScatterThatWasSet()
    {
        var bar = Render<LimitBar>(parameters => parameters
            .Add(p => p.Quantity, "Mn").Add(p => p.Least, 0.20).Add(p => p.Most, 0.40).Add(p => p.Value, 0.355).Add(p => p.Doubt, 0.03).Add(p => p.Repeatability, 0.05));

        Assert.Equal("in", bar.Find(".limit").GetAttribute("data-verdict")); // 0.045 from the most
        Assert.Equal("± 0.03\u00a0%", bar.Find("[data-testid=doubt]").TextContent);
        Assert.Equal("repeatability 0.05\u00a0%", bar.Find("[data-testid=repeatability]").TextContent);
        Assert.EndsWith("in; ± 0.03\u00a0%; repeatability 0.05\u00a0%", bar.Find("[role=img]").GetAttribute("aria-label"), StringComparison.Ordinal);
        // The bar is 0.40 long, from 0.10 on: 0.305 to 0.405 %.
        Assert.Equal("left:51.25%;width:25%", bar.Find(".limit-repeat").GetAttribute("style"));
    }

    [Theory]
    [InlineData(0.015, "repeatability 0.015\u00a0%")]
    [InlineData(0.0006, "repeatability 0.0006\u00a0%")]
    public void Repeatability_OfFewDigits_IsNotRoundedToAnother(double repeatability, string words) => Assert.Equal(words, Render<LimitBar>(parameters => parameters
        .Add(p => p.Quantity, "Mn").Add(p => p.Most, 0.40).Add(p => p.Value, 0.355).Add(p => p.Repeatability, repeatability)).Find("[data-testid=repeatability]").TextContent);

    [Fact]
    public void Drawn_WithoutRepeatability_SaysAndDrawsNone() => Assert.Empty(Draw(0.30, 0.02).FindAll(".limit-repeat, [data-testid=repeatability]"));

    [Fact]
    public void Drawn_WithTheRestOfAnArithmeticForAScatter_SaysNone() =>
        Assert.Empty(Draw(0.30, 2.2e-17).FindAll("[data-testid=doubt]")); // three burns of the same value

    [Fact]
    public void Drawn_ForAScreenReader_SaysItAll() =>
        Assert.Equal("Mn: 0.30\u00a0%; least 0.20\u00a0%, aim no limit, most 0.40\u00a0%; in", Draw(0.30, 0).Find(".limit").GetAttribute("aria-label"));

    /// <summary>Measured all the same: a liquidus beyond the end of its formula, with no value or one that is no number.</summary>
    [Theory]
    [InlineData(null, false)]
    [InlineData(double.NaN, true)]
    public void Drawn_OfWhatAFormulaSaysNothingOf_IsNeitherInNorNotMeasured(double? value, bool isJudged)
    {
        var bar = Render<LimitBar>(parameters => parameters.Add(p => p.Quantity, "Sc").Add(p => p.Least, 0.8).Add(p => p.Most, 1.1).Add(p => p.Value, value).Add(p => p.IsJudged, isJudged)).Find(".limit");

        Assert.Equal("unjudged", bar.GetAttribute("data-verdict"));
        Assert.Equal("–", bar.QuerySelector(".limit-value")!.TextContent);
        Assert.StartsWith("saturation Sc: not judged; least 0.8", bar.GetAttribute("aria-label"), StringComparison.Ordinal);
    }

    [Fact]
    public void Drawn_OfAReadingBelowDetection_SaysSo()
    {
        var bar = Render<LimitBar>(parameters => parameters.Add(p => p.Quantity, "S").Add(p => p.Most, 0.014).Add(p => p.Value, 0.003).Add(p => p.BelowMark, "<")).Find(".limit");

        Assert.Equal("<0.003\u00a0%", bar.QuerySelector(".limit-value")!.TextContent);
        Assert.StartsWith("S: <0.003\u00a0%;", bar.GetAttribute("aria-label"), StringComparison.Ordinal);
    }

    [Fact]
    public void Drawn_WithScatterAndDistance_SaysThemToAScreenReaderToo()
    {
        var bar = Render<LimitBar>(parameters => parameters.Add(p => p.Quantity, "S").Add(p => p.Decimals, 3).Add(p => p.Most, 0.014).Add(p => p.Value, 0.013)
            .Add(p => p.Doubt, 0.0004).Add(p => p.Distance, 2.5).Add(p => p.Band, 0.002).Add(p => p.IsTooClose, true)).Find("[role=img]");

        Assert.Equal(
            "S: 0.013\u00a0%; least no limit, aim no limit, most 0.014\u00a0%; too close to tell; 2.5 × repeatability from the nearer limit; ± 0.0004\u00a0%; scatter ± 0.002\u00a0%",
            bar.GetAttribute("aria-label"));
    }

    [Fact]
    public void Drawn_SmallScatter_IsNotPrintedAsNone() => Assert.Equal("± 0.0004\u00a0%", Draw(0.30, 0.0004).Find("[data-testid=doubt]").TextContent);

    [Theory]
    [InlineData(0.30, 0.0)]
    [InlineData(0.50, 0.0)]
    [InlineData(0.39, 0.02)]
    [InlineData(null, 0.0)]
    public void Drawn_Any_HidesItsMarkFromAScreenReaderAndIsNoStopOfTheTabKey(double? value, double doubt)
    {
        var bar = Draw(value, doubt);

        Assert.Equal("true", bar.Find(".limit-verdict > span").GetAttribute("aria-hidden"));
        Assert.Empty(bar.FindAll("[tabindex], button, a, input"));
    }

    [Fact]
    public void Doubt_OfNothingButRounding_IsNotSaid() => Assert.Empty(Draw(0.30, 1e-17).FindAll("[data-testid=doubt]"));

    private IRenderedComponent<LimitBar> Draw(double? value, double doubt) => Render<LimitBar>(parameters => parameters
        .Add(p => p.Quantity, "Mn").Add(p => p.Least, 0.20).Add(p => p.Most, 0.40).Add(p => p.Value, value).Add(p => p.Doubt, doubt));
}

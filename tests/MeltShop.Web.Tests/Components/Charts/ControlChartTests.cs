using Bunit;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Web.Components.Charts;

namespace MeltShop.Web.Tests.Components.Charts;

public sealed class ControlChartTests : ComponentTest
{
    private static readonly ControlLimits Limits = new(3.50, 0.03);

    [Fact]
    public void Limits_BelowTwentyPoints_AreNotDrawnAndThatIsSaid()
    {
        var chart = Draw(Points(19));

        Assert.Empty(chart.FindAll(".chart-control, .chart-centre"));
        Assert.StartsWith("Results: 19", chart.Find("[data-testid=chart-words]").TextContent, StringComparison.Ordinal);
        Assert.Equal(4, chart.FindAll(".chart-specified").Count);
    }

    [Fact]
    public void Limits_OfTwentyPoints_AreDrawnUnlikeTheSpecifiedOnes()
    {
        var chart = Draw(Points(20));

        Assert.Equal(2, chart.FindAll(".chart-control").Count);
        Assert.Single(chart.FindAll(".chart-centre"));
        Assert.Equal(4, chart.FindAll(".chart-specified").Count);
        Assert.Contains("upper control limit 3.59", chart.Markup, StringComparison.Ordinal);
        Assert.Contains("specified most 3.70", chart.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Signal_OnTheChart_HasAShapeOfItsOwnAndItsReasonInWords()
    {
        var points = Points(20);
        points[7] = points[7] with { Value = 3.61, Signal = "beyond 3 sigma", Reason = "wrong returns" };
        var chart = Draw(points);

        Assert.Single(chart.FindAll("path.chart-signal"));
        Assert.Equal(19, chart.FindAll("circle.chart-point").Count);
        Assert.Contains("wrong returns", chart.FindAll(".chart-word").Select(word => word.TextContent));
        var row = chart.FindAll("[data-testid=chart-table] tbody tr")[7];
        Assert.Equal(["heat 8", "3.61\u00a0%", "◆ beyond 3 sigma", "wrong returns"], row.Children.Select(cell => cell.TextContent));
    }

    [Fact]
    public void Ranges_WithoutALowerLimit_AreDrawnFromZeroWithDecimalsThatTellTheirLinesApart()
    {
        var ranges = Enumerable.Range(1, 24).Select(number => new ChartPoint($"heat {number}", number % 2 == 0 ? 0.0001 : 0.0003)).ToArray();
        var chart = Render<ControlChart>(parameters => parameters
            .Add(p => p.Title, "Ranges").Add(p => p.Points, ranges).Add(p => p.Limits, new ControlLimits(0.0002, 0.0001)).Add(p => p.HasLower, false).Add(p => p.Decimals, 3));
        var words = chart.FindAll(".chart-word").Select(word => word.TextContent).ToList();

        Assert.Contains("0.00000", words);
        Assert.Contains("mean 0.00020", words);
        Assert.Contains("%", words);
        Assert.DoesNotContain("Double line", chart.Find("[data-testid=chart-words]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Limits_OfACertificate_AreNotCalledSpecified()
    {
        var chart = Render<ControlChart>(parameters => parameters
            .Add(p => p.Title, "Carbon").Add(p => p.Points, Points(20)).Add(p => p.Limits, Limits).Add(p => p.Least, 3.30).Add(p => p.Most, 3.70).Add(p => p.IsCertified, true));

        Assert.Contains("certified, most 3.70", chart.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("specified", chart.FindAll(".chart-word").Select(word => word.TextContent).Aggregate(string.Concat), StringComparison.Ordinal);
    }

    [Fact]
    public void Chart_ForAScreenReader_SaysWhatItShows() =>
        Assert.Equal("Carbon: 20 results, the last 3.50\u00a0%, 0 signals; the table has them all", Draw(Points(20)).Find("svg").GetAttribute("aria-label"));

    [Fact]
    public void Chart_WithoutResults_SaysSo() => Assert.Contains("No results yet", Draw([]).Markup, StringComparison.Ordinal);

    [Fact]
    public void Words_OfLimitsThatLieClose_KeepClearOfEachOther()
    {
        var chart = Render<ControlChart>(parameters => parameters.Add(p => p.Title, "Carbon").Add(p => p.Points, Points(20)).Add(p => p.Limits, Limits).Add(p => p.Most, 3.591).Add(p => p.Least, 3.409));
        var heights = chart.FindAll("text[text-anchor=start]").Where(word => word.TextContent.Contains(" 3.", StringComparison.Ordinal))
            .Select(word => double.Parse(word.GetAttribute("y")!, System.Globalization.CultureInfo.InvariantCulture)).Order().ToList();

        Assert.Equal(5, heights.Count);
        Assert.All(heights.Zip(heights.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 23.9, $"{pair}"));
    }

    [Fact]
    public void Keyboard_OfAChart_MovesTheDrawingAndOpensTheTable()
    {
        var chart = Draw(Points(20));

        var frame = chart.Find(".chart-frame"); // wider than a phone: the arrows move it, and who lands on it hears where
        Assert.Equal(("0", "region", "Carbon"), (frame.GetAttribute("tabindex"), frame.GetAttribute("role"), frame.GetAttribute("aria-label")));
        Assert.Equal("The same as a table", chart.Find("details > summary").TextContent);
        Assert.Equal(["Result", "Value", "Rule broken", "Reason"], chart.FindAll("[data-testid=chart-table] th[scope=col]").Select(head => head.TextContent));
        Assert.Equal(20, chart.FindAll("[data-testid=chart-table] th[scope=row]").Count);
        Assert.Equal("FIGURE", chart.Find("figcaption").ParentElement!.TagName);
    }

    [Fact]
    public void Result_WithAnAddress_IsALinkInTheTable()
    {
        var points = Points(20);
        points[3] = points[3] with { Address = "/heats/4" };

        Assert.Equal("/heats/4", Draw(points).Find("[data-testid=chart-table] a").GetAttribute("href"));
    }

    private static ChartPoint[] Points(int count) => [.. Enumerable.Range(1, count).Select(number => new ChartPoint($"heat {number}", number % 2 == 0 ? 3.50 : 3.52))];

    [Fact]
    public void Signals_ThatLeadToAHeat_AreListedTheLatestFirst()
    {
        var chart = Draw([.. Points(20).Select((point, index) => index is < 6 or 19 ? point with { Signal = "one beyond 3 sigma", Address = $"/heats/{index}" } : point)]);

        Assert.Equal(["/heats/19", "/heats/5", "/heats/4", "/heats/3", "/heats/2"], chart.FindAll("[data-testid=chart-signals] a").Select(link => link.GetAttribute("href")));
        Assert.Contains("2 earlier ones stand in the table.", chart.Markup, StringComparison.Ordinal);
        Assert.Empty(Draw(Points(20)).FindAll("[data-testid=chart-signals]"));
    }

    private IRenderedComponent<ControlChart> Draw(IReadOnlyList<ChartPoint> points) => Render<ControlChart>(parameters => parameters
        .Add(p => p.Title, "Carbon").Add(p => p.Points, points).Add(p => p.Limits, Limits).Add(p => p.Least, 3.30).Add(p => p.Most, 3.70));
}

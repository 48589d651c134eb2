using Bunit;
using MeltShop.Records.Sites;
using MeltShop.Web.Components.Units;
using MeltShop.Web.Components.Weighing;

namespace MeltShop.Web.Tests.Components.Weighing;

public sealed class WeighingCardTests : ComponentTest
{
    [Theory]
    [InlineData(WeighingStanding.Later, 1000, null, "1000", "")]
    [InlineData(WeighingStanding.Next, 1000, 400.0, "600", "400")]
    [InlineData(WeighingStanding.Done, 1000, 1004.0, "✓ done", "1004")]
    [InlineData(WeighingStanding.Over, 1000, 1215.0, "▲ 215\u00a0kg too much", "1215")]
    [InlineData(WeighingStanding.Later, 0, null, "–", "")]
    [InlineData(WeighingStanding.Short, 1000, 400.0, "– 600\u00a0kg less", "400")]
    public void Step_InEachState_SaysWhatIsToGoAndWhatIsIn(WeighingStanding standing, double target, double? actual, string left, string said)
    {
        var cells = Draw(new WeighingStep("pig", "Pig iron", target, actual, standing)).FindAll("tr[data-material] td");

        Assert.Equal(["1", target > 0 ? "1000" : "no target", left, said], cells.Select(cell => cell.TextContent.Trim()));
        Assert.Equal(target > 0, !cells[1].ClassList.Contains("loading-none")); // a word, and no figure that is read from two metres
    }

    [Fact]
    public void Step_ThatIsNext_IsMarkedByAWordAndForThoseWhoHearThePage()
    {
        var card = Draw(new("a", "First", 10, 10, WeighingStanding.Done), new("b", "Second", 20, null, WeighingStanding.Next));

        var next = card.Find("[aria-current=step]");
        Assert.Equal("b", next.GetAttribute("data-material"));
        Assert.Contains("next", next.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Step_ThatIsNext_StandsAboveTheCardWithWhatIsLeftAndTheLotsToTakeItFrom()
    {
        var card = Draw(
            new("a", "First", 10, 10, WeighingStanding.Done),
            new("b", "Second", 700, 100, WeighingStanding.Next) { Lots = [new("L 1", 400, "4"), new("L 2", 150), new(null, 50)] },
            new("c", "Third", 20, null, WeighingStanding.Later) { Lots = [new("T 1", 20, "7 north")] },
            new("d", "Fourth", 20, null, WeighingStanding.Later) { Lots = [new(null, 20, "9")] });

        var now = card.Find("[data-testid=loading-now]");
        Assert.Equal(("Second", "600\u00a0kg"), (now.QuerySelector(".loading-name")!.TextContent, now.QuerySelector(".loading-left")!.TextContent));
        Assert.Equal("400\u00a0kg from bin 4, lot L 1, 150\u00a0kg from lot L 2, 50.0\u00a0kg without a lot", now.QuerySelector("[data-testid=from-lots]")!.TextContent);
        Assert.Equal("from bin 7 north, lot T 1", card.Find("[data-material=c] [data-testid=from-lots]").TextContent);
        Assert.Equal("from bin 9", card.Find("[data-material=d] [data-testid=from-lots]").TextContent);
        Assert.Empty(card.FindAll("[data-material=a] [data-testid=from-lots]"));
    }

    [Fact]
    public void Card_OfAChargeThatIsIn_SaysWhyNothingIsNext()
    {
        var card = Render<WeighingCard>(parameters => parameters.Add(c => c.Heading, "OTF-2026-0007").Add(c => c.What, "EN-GJS-500-7")
            .Add(c => c.Steps, [new WeighingStep("a", "First", 10, 4, WeighingStanding.Short)]).Add(c => c.Cautions, "<p>Molten metal</p>").Add(c => c.Closed, "The heat is being tapped."));

        Assert.Equal("■ The heat is being tapped.", card.Find("[data-testid=loading-closed]").TextContent);
        Assert.Empty(Draw(new WeighingStep("a", "First", 10, 4, WeighingStanding.Next)).FindAll("[data-testid=loading-closed]"));
    }

    [Fact]
    public void Card_OfWhichAllIsIn_NamesNothingToWeighNext() =>
        Assert.Empty(Draw(new WeighingStep("a", "First", 10, 10, WeighingStanding.Done)).FindAll("[data-testid=loading-now]"));

    [Fact]
    public void Figures_OfAStep_CarryTheirHeadingsForANarrowScreen()
    {
        var card = Draw(new("a", "First", 10, 4, WeighingStanding.Next), new("b", "Second", 20, null, WeighingStanding.Later));

        Assert.Equal(["Weigh in, kg", "To go, kg", "Weighed, kg"], Headings(card.Find("[data-material=a]")));
        Assert.Equal(["Weigh in, kg", "To go, kg"], Headings(card.Find("[data-material=b]"))); // over nothing stands no heading
    }

    [Fact]
    public void Card_InAShopOfPounds_SaysEveryMassInPounds()
    {
        Measure(ShopUnits.Of(MassUnit.Pound, TemperatureUnit.Celsius));
        var card = Draw(new WeighingStep("pig", "Pig iron", 1000, 400, WeighingStanding.Next));

        Assert.Equal(["2205", "1323", "882"], card.FindAll("tr[data-material] td").Skip(1).Select(cell => cell.TextContent.Trim()));
        Assert.Equal(["Weigh in, lb", "To go, lb", "Weighed, lb"], card.FindAll("thead th").Skip(2).Select(head => head.TextContent));
        Assert.DoesNotContain(" kg", card.Markup.Replace('\u00a0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void Card_AsBlocksOnANarrowScreen_IsATableStillToThoseWhoHearIt()
    {
        var card = Draw(new WeighingStep("a", "First", 10, null, WeighingStanding.Next));

        Assert.Equal("table", card.Find("table").GetAttribute("role"));
        Assert.Equal("Load in this order", card.Find("caption").TextContent);
        Assert.All(card.FindAll("thead, tbody"), part => Assert.Equal("rowgroup", part.GetAttribute("role")));
        Assert.All(card.FindAll("tr"), row => Assert.Equal("row", row.GetAttribute("role")));
        Assert.All(card.FindAll("thead th"), head => Assert.Equal("columnheader", head.GetAttribute("role")));
        Assert.Equal(["cell", "rowheader", "cell", "cell", "cell"], card.FindAll("tbody tr > *").Select(cell => cell.GetAttribute("role")));
    }

    [Fact]
    public void Card_WithoutSteps_HasItsHeadAndCautions()
    {
        var card = Draw();

        Assert.Equal("OTF-2026-0007", card.Find("h1").TextContent);
        Assert.Empty(card.FindAll("tbody tr"));
    }

    [Fact]
    public void Card_Any_CarriesItsCautions() => Assert.Contains("Molten metal", Draw().Find("[data-testid=cautions]").TextContent, StringComparison.Ordinal);

    private static IEnumerable<string> Headings(AngleSharp.Dom.IElement row) => row.QuerySelectorAll("[data-heading]").Select(cell => cell.GetAttribute("data-heading")!);

    private IRenderedComponent<WeighingCard> Draw(params WeighingStep[] steps) => Render<WeighingCard>(parameters => parameters
        .Add(card => card.Heading, "OTF-2026-0007").Add(card => card.What, "EN-GJS-500-7").Add(card => card.Steps, steps).Add(card => card.Cautions, "<p>Molten metal</p>"));
}

using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.JointPours;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>A pouring furnace that is topped up, as it is typed; the figures are those worked by hand in the room's own test.</summary>
public sealed class ToppingUpTests : DemoShopTest
{
    [Fact]
    public void Bath_ToppedUpInTime_ShowsWhatIsMixedAndUntilWhenItMayBePoured()
    {
        var page = Open();
        Fill(page, minute: "10");

        Assert.Contains("700\u00a0kg, 0.0300\u00a0%", page.Find("[data-moment='1']").TextContent, StringComparison.Ordinal);
        Assert.Contains("\u00a0kg, 0.0330\u00a0%", page.Find("[data-moment='1']").TextContent, StringComparison.Ordinal);
        Assert.Contains("until minute 15.0", page.Find("[data-moment='0']").TextContent, StringComparison.Ordinal);
        Assert.Equal(["Flare", "Damp", "Overfill", "Decides"], page.FindAll("[data-testid=bath-cautions] [data-caution]").Select(c => c.GetAttribute("data-caution")));
    }

    [Fact]
    public void Page_InALanguageWithADecimalComma_HasNoPointInItsWords()
    {
        Speak("de-DE");
        var words = Open().Find("h1 ~ p, .page-head + p").TextContent;

        Assert.Contains("0,010\u00a0%", words, StringComparison.Ordinal);
        Assert.Contains("0,007\u00a0%", words, StringComparison.Ordinal);
    }

    // By hand: 0.038 - 10 x 0.0012 = 0.026, mixed with 300 kg of 0.048 less 0.010; see the room's own test of the band.
    [Fact]
    public void Bath_GiveOrTake_ShowsItsBandAndWarnsWhereItMayBeUnderTheFloor()
    {
        var page = Open();
        Fill(page, minute: "10");
        Assert.Contains("0.0330 to 0.0339\u00a0%", page.Find("[data-moment='1'] [data-testid=band]").TextContent, StringComparison.Ordinal); // the loss alone

        foreach (var (field, text) in new[] { ("mgPlusMinus", "0.0020"), ("fadePlusMinus", "0.0002"), ("topUps[0].mgPlusMinus", "0.0020") }) page.Find($"[data-field='{field}'] input").Change(text);
        Assert.Contains("0.0296 to 0.0373\u00a0%", page.Find("[data-moment='1'] [data-testid=band]").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[data-testid=maybe-late]"));

        page.Find("[data-field='topUps[0].minute'] input").Change("12");
        Assert.Contains("from minute 10.8", page.Find("[data-moment='0'] [data-testid=maybe-late]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Bath_ToppedUpAfterItsFloor_SaysWhereThePourHasToStop()
    {
        var page = Open();
        Fill(page, minute: "17");

        Assert.Contains("stop at minute 15.0", page.Find("[data-moment='0'] [data-testid=too-late]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Bath_InThePseudoLanguage_HasNoWordOutsideItsTexts()
    {
        Speak(PseudoLanguage.Culture);

        Assert.Empty(Marks.WordsOutside(Open().Nodes, "kg", "min"));
    }

    private IRenderedComponent<ToppingUp> Open()
    {
        SignIn(Role.Melter);
        return Render<ToppingUp>();
    }

    private static void Fill(IRenderedComponent<ToppingUp> page, string minute)
    {
        foreach (var (field, text) in new[]
        {
            ("kg", "1000"), ("mgPercent", "0.0400"), ("fade", "0.0010"), ("pourKgPerMinute", "30"), ("mgFloorPercent", "0.0250"),
            ("topUps[0].minute", minute), ("topUps[0].kg", "300"), ("topUps[0].mgPercent", "0.0500"),
        }) page.Find($"[data-field='{field}'] input").Change(text);
    }
}

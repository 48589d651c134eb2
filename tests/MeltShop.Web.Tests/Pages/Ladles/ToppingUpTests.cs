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

        Assert.Contains("700 kg, 0.0300 %", page.Find("[data-moment='1']").TextContent, StringComparison.Ordinal);
        Assert.Contains(" kg, 0.0330 %", page.Find("[data-moment='1']").TextContent, StringComparison.Ordinal);
        Assert.Contains("until minute 15.0", page.Find("[data-moment='0']").TextContent, StringComparison.Ordinal);
        Assert.Equal(["Flare", "Damp", "Overfill", "Decides"], page.FindAll("[data-testid=bath-cautions] [data-caution]").Select(c => c.GetAttribute("data-caution")));
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

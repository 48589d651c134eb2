using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.JointPours;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>Several ladles into one casting, as they are typed; figures of the test's own.</summary>
public sealed class JointPouringTests : DemoShopTest
{
    [Fact]
    public void TwoLadles_OneUnderItsFloor_FailsByItselfThoughTheMixtureIsGood()
    {
        var page = Open();
        Fill(page, 0, "0.050", "2");
        Assert.Empty(page.FindAll("[data-testid=joint-answer]"));
        Fill(page, 1, "0.041", "3");

        Assert.NotNull(page.Find("[data-passes=no]"));
        Assert.Contains("magnesium, 2.0\u00a0min too long", page.Find("[data-part='1']").TextContent, StringComparison.Ordinal); // a minute of life, three of pour
        Assert.Contains("0.0430\u00a0%", page.Find("[data-testid=mixture]").TextContent, StringComparison.Ordinal);
        Assert.Equal(["Flare", "Damp", "Decides"], page.FindAll("[data-testid=joint-cautions] [data-caution]").Select(c => c.GetAttribute("data-caution")));
    }

    [Fact]
    public void TwoLadles_OneLate_NamesTheOneThatFailsMeanwhile()
    {
        var page = Open();
        Fill(page, 0, "0.050", "2");
        Fill(page, 1, "0.045", "3");
        Assert.NotNull(page.Find("[data-passes=yes]"));
        Assert.Empty(page.FindAll("[data-testid=fails-when-late]"));
        page.Find("[data-field=late] input").Change("3");

        Assert.Contains("Ladle 2", page.Find("[data-part='0'] [data-testid=fails-when-late]").TextContent, StringComparison.Ordinal); // 2 min to spare
        Assert.Empty(page.FindAll("[data-part='1'] [data-testid=fails-when-late]")); // 8 min to spare
    }

    [Fact]
    public void Ladle_Chosen_BringsItsFigures()
    {
        var page = Open();
        var choice = page.Find("[data-joint-ladle='0'] select");
        choice.Change(choice.QuerySelectorAll("option")[1].GetAttribute("value"));

        Assert.Equal("0.0012", Field(page, 0, "fade").GetAttribute("value"));
        Assert.Equal("5.5", Field(page, 0, "heatLoss").GetAttribute("value"));
        Assert.Equal("12", Field(page, 0, "inoculationMinutes").GetAttribute("value"));
    }

    private static void Fill(IRenderedComponent<JointPouring> page, int ladle, string magnesium, string to)
    {
        (string, string)[] texts =
        [
            ("kg", "10000"), ("mgPercent", magnesium), ("mgFloorPercent", "0.040"), ("fade", "0.001"), ("temperatureC", "1400"), ("heatLoss", "4"),
            ("treatmentMinutes", "6"), ("pourFrom", "0"), ("pourTo", to),
        ];
        foreach (var (path, text) in texts) Field(page, ladle, path).Change(text);
    }

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<JointPouring> page, int ladle, string path) =>
        page.Find($"[data-field=\"ladles[{ladle}].{path}\"] input");

    private IRenderedComponent<JointPouring> Open()
    {
        SignIn(Role.Metallurgist);
        var page = Render<JointPouring>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }
}

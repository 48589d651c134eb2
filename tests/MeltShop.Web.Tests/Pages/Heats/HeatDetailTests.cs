using Bunit;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Web.Pages.Heats;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;

namespace MeltShop.Web.Tests.Pages.Heats;

public sealed class HeatDetailTests : HeatTest
{
    [Fact]
    public async Task Heat_JustStarted_ShowsNumberGradeAndFurnaceAndSaysWhatWasNotMeasured()
    {
        var page = Open();

        Assert.Equal((await Heat()).Heat.Number, page.Find("[data-testid=heat-number]").TextContent);
        Assert.Contains("EN-GJS-500-7", page.Find("[data-testid=heat-head]").TextContent, StringComparison.Ordinal);
        Assert.Contains("Furnace 1", page.Find("[data-testid=heat-head]").TextContent, StringComparison.Ordinal);
        Assert.Equal("Charging", page.Find("[data-testid=steps]").GetAttribute("data-state"));
        Assert.Contains("not measured", page.Find("[data-testid=figures]").TextContent, StringComparison.Ordinal);
        Assert.Contains("No bath sample was taken yet", page.Find("[data-testid=samples]").TextContent, StringComparison.Ordinal);
        Assert.Contains("heat started", page.Find("[data-testid=timeline]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Heat_Unknown_IsMissing()
    {
        SignIn(Role.Melter);
        var page = Render<HeatDetail>(parameters => parameters.Add(p => p.HeatId, 4711));

        page.WaitForState(() => page.FindAll("[data-state=missing]").Count > 0, Patience);
    }

    [Fact]
    public async Task Heat_ThatCannotBeRead_SaysSoAndOffersToTryAgain()
    {
        await Break("Temperatures");
        SignIn(Role.Melter);
        var page = Render<HeatDetail>(parameters => parameters.Add(p => p.HeatId, HeatId));
        page.WaitForState(() => page.FindAll("[data-state=failed]").Count > 0, Patience);

        Assert.NotEmpty(page.FindAll("[data-state=failed] button"));
    }

    [Fact]
    public async Task Heat_ThatCannotBeReadAgain_StaysWithWhatIsTypedAndSaysThatItIsOld()
    {
        var page = Open();
        Type(page, "temperature-form", "temperatureC", "1487");
        await Break("Heats");
        The<ChangeNotices>().Publish(ChangeNotice.Anything);
        page.WaitForAssertion(() => Assert.Equal("Not up to date", page.Find("[data-state=ready] .notice[role=alert] .notice-heading").TextContent));
        Assert.Equal("1487", Degrees());
        Press(page, "Try again");
        Assert.NotEmpty(page.FindAll("[data-state=ready] .notice[role=alert]"));

        await Mend("Heats");
        Press(page, "Try again");
        page.WaitForState(() => page.FindAll(".notice").Count == 0);
        Assert.Equal("1487", Degrees());

        await Break("Heats");
        page.Render(parameters => parameters.Add(p => p.HeatId, HeatId + 1)); // another heat is none that is old
        page.WaitForState(() => page.FindAll("[data-state=failed]").Count > 0);

        string? Degrees() => Field(page, "temperature-form", "temperatureC").QuerySelector("input")!.GetAttribute("value");
    }

    [Fact]
    public void Heat_ReadByAnAdministrator_OffersNoFormAndSaysWhoMay()
    {
        var page = Open(Role.Administrator);

        Assert.Empty(page.FindAll("form"));
        Assert.NotNull(page.Find("[data-testid=read-only]"));
    }

    [Fact]
    public async Task Heat_ChangedBySomebodyElse_IsShownWithoutReloading()
    {
        var page = Open();
        await WeighIn("steel", 123);

        page.WaitForAssertion(() => Assert.Contains("123\u00a0kg of Test steel weighed in", page.Find("[data-testid=timeline]").TextContent, StringComparison.Ordinal), Patience);
        Assert.Contains("Test Founder", page.Find("[data-testid=timeline]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Heat_WithABath_OffersALadleAndSamplesFirst()
    {
        await WeighAll();
        await GoodSample();
        var page = Open();

        Assert.Equal("samples", page.Find(".heat-section").Id);
        Assert.Equal($"/heats/{HeatId}/ladle", page.Find("[data-testid=ladles] a.press").GetAttribute("href"));
    }

    [Fact]
    public async Task Heat_InItsBath_SaysHowLongEachStepTookAndTakesNow()
    {
        var start = (await Heat()).Heat.StartedAt;
        Clock.At = start.AddMinutes(43);
        await GoodSample();
        Clock.At = start.AddMinutes(52.5);
        var page = Open();

        Assert.Equal(["43\u00a0min", "9\u00a0min"], page.FindAll("[data-testid=steps] .ribbon-minutes").Select(minutes => minutes.TextContent.Trim()));
        Assert.Equal("step", page.FindAll("[data-testid=steps] li")[1].GetAttribute("aria-current"));
    }

    [Fact]
    public async Task Heat_InThePseudoLanguage_HasNoWordOutsideItsTexts()
    {
        await WeighAll();
        await Sample([3.64, 1.50, 0.30], [3.65, 1.51, 0.30], [3.66, 1.52, 0.31], [3.90, 1.52, 0.31]);
        Speak(PseudoLanguage.Culture);
        var page = Open(Role.Metallurgist);

        Assert.Empty(Marks.WordsOutside(
            page.Nodes, (await Heat()).Heat.Number, "Test pig", "Test steel", "Test carbon", "Test fesi", "Test copper", "Test Founder", "EN-GJS-500-7", "Furnace 1", "kg", "min",
            "Si", "Mn", "Cu", "C", "S", "P"));
        Assert.NotEmpty(page.FindAll("[data-testid=sample]"));
    }
}

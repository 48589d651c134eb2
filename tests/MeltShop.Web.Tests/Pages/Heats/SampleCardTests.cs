using Bunit;
using MeltShop.Records.People;
using Element = MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Web.Tests.Pages.Heats;

public sealed class SampleCardTests : HeatTest
{
    [Fact]
    public async Task Sample_Inside_SaysSoAndNamesWhatWasNotMeasured()
    {
        await GoodSample();
        var page = Open();

        Assert.Equal("in", page.Find("[data-testid=sample] [data-quantity=C]").GetAttribute("data-verdict"));
        Assert.Equal("unknown", page.Find("[data-testid=sample] [data-quantity=Cu]").GetAttribute("data-verdict"));
        Assert.Contains("not measured: Cu", page.Find("[data-testid=sample-verdict]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sample_Outside_NamesTheElement()
    {
        await Sample([3.64, 1.10, 0.30], [3.65, 1.11, 0.30], [3.66, 1.10, 0.31]);

        Assert.Contains("outside: Si", Open().Find("[data-testid=sample-verdict]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sample_NearerToTheLimitThanItIsCertain_IsTooCloseToTell()
    {
        await Sample([3.64, 1.29, 0.30], [3.65, 1.34, 0.30], [3.66, 1.31, 0.31]);

        Assert.Equal("close", Open().Find("[data-testid=sample] [data-quantity=Si]").GetAttribute("data-verdict"));
    }

    [Fact]
    public async Task Burns_Three_AreTooFewForATestAndThatIsSaid()
    {
        await Sample([3.64, 1.50, 0.30], [3.65, 1.51, 0.30], [3.95, 1.50, 0.30]);
        var page = Open();

        Assert.Contains("Below 4 no test", page.Find("[data-testid=suspect-rule]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("suspect:", page.Find("[data-testid=burn-table]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Burn_Suspect_IsMarkedByItsRuleAndSetAsideWithAReason()
    {
        await Sample([3.64, 1.50, 0.30], [3.65, 1.51, 0.30], [3.66, 1.50, 0.30], [3.64, 1.50, 0.30], [3.95, 1.50, 0.30]);
        var page = Open(Role.Metallurgist);
        Assert.Contains("suspect: C (Grubbs, 1 %)", page.Find("[data-burn=\"5\"]").TextContent, StringComparison.Ordinal);

        page.Find("[data-burn=\"5\"] button").Click();
        await page.Find("[data-testid=aside-form]").SubmitAsync();
        Assert.Equal("text.missing", Error(page, "aside-form", "reason"));
        Type(page, "aside-form", "reason", "crater at the edge");
        await page.Find("[data-testid=aside-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Contains("set aside: crater at the edge", page.Find("[data-burn=\"5\"]").TextContent, StringComparison.Ordinal), Patience);

        var sample = Assert.Single((await Heat()).Samples);
        Assert.Equal(3.6475, sample.Mean(Element.C)!.Value, 1e-9);
        Assert.Equal(5, sample.Burns.Count);
    }

    [Fact]
    public async Task Burn_ReadByAMelter_CannotBeSetAside()
    {
        await GoodSample();

        Assert.DoesNotContain(Open().FindAll("button"), button => button.TextContent == "Set aside");
    }
}

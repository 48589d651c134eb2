using Bunit;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Storing;
using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Tests.Pages.Ladles;

public sealed class LadlePreparationTests : LadleTest
{
    [Fact]
    public async Task Preparation_WithAWholeRecipe_ShowsItInALineAndOpensItWhereSomethingIsMissingOrRefused()
    {
        await BathSample();
        var page = Open();
        Assert.False(page.Find("[data-testid=recipe]").HasAttribute("open"));
        Assert.Matches("not under 0[.][0-9]+\u00a0%", page.Find("[data-testid=recipe-line]").TextContent);

        Type(page, "mgFloorPercent", "");
        page.WaitForState(() => page.Find("[data-testid=recipe]").HasAttribute("open"), Patience);
        Assert.Contains("not under –\u00a0%", page.Find("[data-testid=recipe-line]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Preparation_OfARecipeWithCover_BeginsWithIt()
    {
        await BathSample();
        var page = Open();
        Type(page, "temperatureC", "1480");
        Type(page, "plannedKg", "800");
        page.WaitForState(() => page.FindAll("[data-testid=stop-weight]").Count > 0, Patience);

        Assert.Equal("1", page.Find("[data-field=coverRatePercent] input").GetAttribute("value"));
        Assert.Contains("8.0\u00a0kg", page.Find("[data-testid=pocket-card]").TextContent, StringComparison.Ordinal); // 1 % of 800 kg
    }

    [Fact]
    public void Preparation_WithoutBathSample_SaysWhatIsMissing()
    {
        var page = Open("empty");

        Assert.Equal("No bath sample yet", page.Find(".notice-heading").TextContent);
    }

    [Fact]
    public async Task Preparation_MassAndTemperature_ShowTheCardAtOnceAndWhyItIsNotThePrintedFigure()
    {
        await BathSample();
        var page = Open();
        Type(page, "temperatureC", "1480");
        Type(page, "plannedKg", "800");
        page.Find("[data-field=coverMaterialId] select").Change(""); // the printed formula knows none
        page.WaitForState(() => page.FindAll("[data-testid=why]").Count > 0, Patience);

        Assert.Equal("0.012", page.Find("[data-field=baseSulphurPercent] input").GetAttribute("value"));
        Assert.Matches("^[0-9.]+\u00a0kg", page.Find("[data-testid=alloy-kg]").TextContent.Trim());
        Assert.Contains("printed general formula", page.Find("[data-testid=why]").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[data-testid=findings]"));
    }

    [Fact]
    public async Task Preparation_MoreThanTheLadleHolds_IsSaidAtTheFieldBeforeAnythingIsHandedIn()
    {
        await BathSample();
        var page = Open();
        Type(page, "temperatureC", "1480");
        Type(page, "plannedKg", "900,5");
        page.WaitForState(() => page.FindAll("[data-field=plannedKg] .field-error[data-code]").Count > 0, Patience);

        Assert.Equal("ladle.overfilled", page.Find("[data-field=plannedKg] .field-error").GetAttribute("data-code"));
        Assert.DoesNotContain("Not saved", page.Markup, StringComparison.Ordinal);
        Assert.Equal("900,5", page.Find("[data-field=plannedKg] input").GetAttribute("value"));
        Assert.Empty(page.FindAll("[data-testid=stop-weight]"));
    }

    [Fact]
    public async Task Preparation_HeavySection_SaysWhatStandsAgainstChunkyGraphiteAndWhoFoundIt()
    {
        await BathSample();
        var page = Open();
        Type(page, "temperatureC", "1480");
        Type(page, "plannedKg", "800");
        Type(page, "sectionMm", "50");
        page.WaitForState(() => page.FindAll("[data-testid=stop-weight]").Count > 0, Patience);
        Assert.Empty(page.FindAll("[data-testid=heavy-section]")); // 50 mm is not over 50 mm

        Type(page, "sectionMm", "120");
        var heavy = page.Find("[data-testid=heavy-section]").TextContent;
        Assert.Contains("Section of 120\u00a0mm", heavy, StringComparison.Ordinal);
        Assert.Contains("Cerium and lanthanum of the bath were not measured", heavy, StringComparison.Ordinal); // not measured is not zero
        Assert.Contains("Antimony in the bath was not measured", heavy, StringComparison.Ordinal);
        Assert.Contains("Journal of the Korea Foundry Society 25 (2005)", heavy, StringComparison.Ordinal);

        await BathSample(("Ce", 0.008), ("La", 0.004), ("Sb", 0.002));
        page.WaitForState(() => page.FindAll("[data-testid=bath-rare]").Count == 0, Patience);
        var numbers = System.Text.RegularExpressions.Regex.Matches(page.Find("[data-testid=antimony]").TextContent, @"0\.\d+")
            .Select(m => double.Parse(m.Value, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.True(numbers[0] > 0.0115, $"{numbers[0]}"); // 0.012 % of the bath, diluted a little, and what the alloy brings
        Assert.Equal(0.8 * numbers[0], numbers[1], 0.0001);
        Assert.Contains("0.002", page.Find("[data-testid=heavy-section]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Preparation_WithoutEveryCheck_IsNotHandedIn()
    {
        await BathSample();
        var page = Open();
        Type(page, "temperatureC", "1480");
        Type(page, "plannedKg", "800");
        page.Do(() => page.FindAll("[data-check]")[0].ChangeAsync(true));
        page.Find("[data-testid=pocket-form]").Submit();

        Assert.NotNull(page.Find("[data-code=\"checks.open\"]"));
        Assert.Null((await Preparation()).Treated);
        Assert.Equal(1, (await Preparation()).NextOrdinal);
    }

    [Fact]
    public async Task Preparation_Loaded_KeepsTheCardThatWasShown()
    {
        await BathSample();
        var page = Open();
        Type(page, "temperatureC", "1480");
        Type(page, "plannedKg", "800");
        foreach (var check in PocketChecks.For(IronFamily.Ductile).Concat(PocketChecks.For(IronFamily.Ductile)))
            page.Find($"[data-check={check}]").Change(true); // twice: what a silent circuit may have heard is told again
        page.Find("[data-testid=pocket-form]").Submit();
        page.WaitForState(() => The<NavigationManager>().Uri.Contains("/ladles/", StringComparison.Ordinal), Patience);

        var id = long.Parse(The<NavigationManager>().Uri.Split('/')[^1], System.Globalization.CultureInfo.InvariantCulture);
        var card = (await Treated(id)).Treated!.Card!;
        Assert.Equal(MagnesiumTreatment.Solve(StoredJson.Value<TreatmentProblem>(card.Problem!))!.AlloyKg, card.AlloyKg!.Value, 1e-9);
    }

    [Fact]
    public async Task Preparation_BySomebodyWhoMayNot_SaysWhoMay()
    {
        await BathSample();

        Assert.Contains("melter, metallurgist", Open(role: Role.Inspector).Find(".read-only").TextContent, StringComparison.Ordinal);
        Assert.Empty(Open().FindAll(".read-only"));
    }

    private IRenderedComponent<LadlePreparation> Open(string state = "ready", string role = Role.Melter)
    {
        SignIn(role);
        var page = Render<LadlePreparation>(parameters => parameters.Add(p => p.HeatId, HeatId));
        page.WaitForState(() => page.FindAll($"[data-state={state}]").Count > 0, Patience);
        return page;
    }

    private static void Type(IRenderedComponent<LadlePreparation> page, string path, string text) =>
        page.Find($"[data-field=\"{path}\"] input").Change(text);
}

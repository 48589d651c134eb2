using Bunit;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Operations.Storing;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Web.Components.Weighing;
using MeltShop.Web.Pages.Heats;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Tests.Pages.Heats;

public sealed class WeighingSheetTests : HeatTest
{
    [Fact]
    public async Task Sheet_OfAHeat_ListsWhatToLoadInOrderWithWhatIsIn()
    {
        await WeighIn("steel", 100);
        var rows = OpenSheet().FindAll("tr[data-material]");

        Assert.Equal(["carbon", "steel"], rows.Take(2).Select(row => row.GetAttribute("data-material")));
        Assert.EndsWith("100", rows[1].TextContent.Trim(), StringComparison.Ordinal);
        Assert.Equal(["Next", "Later"], rows.Take(2).Select(row => row.GetAttribute("data-standing")));
        Assert.Equal(rows[0], OpenSheet().Find("[aria-current=step]"), (one, other) => one.OuterHtml == other.OuterHtml);
    }

    /// <summary>The rest is planned around it, so that nothing is left to go: what is over is over the first plan.</summary>
    [Fact]
    public async Task Sheet_WithMoreOfAMaterialThanThePlanWanted_SaysHowMuchMore()
    {
        var planned = StoredJson.Value<ChargePlan>((await Heat()).Plan.Answer).Lines.Single(line => line.Code == "pig").Kg;
        await WeighIn("pig", planned + 60);

        Assert.Contains("▲ 60.0\u00a0kg too much", OpenSheet().Find("tr[data-material=pig]").TextContent, StringComparison.Ordinal);
    }

    /// <summary>1297 kg "to go" beside a heat that is tapped would send somebody to the scale.</summary>
    [Fact]
    public async Task Sheet_OfAHeatWhoseBathWasSampled_LeavesNothingToGoAndSaysWhy()
    {
        await WeighIn("steel", 100);
        await GoodSample();
        var sheet = OpenSheet();

        Assert.StartsWith("■ The charge is in: the bath was sampled", sheet.Find("[data-testid=loading-closed]").TextContent, StringComparison.Ordinal);
        Assert.Equal("Short", sheet.Find("tr[data-material=steel]").GetAttribute("data-standing"));
        Assert.Matches(@"– \d+\u00a0kg less", sheet.Find("tr[data-material=steel]").TextContent);
        Assert.Empty(sheet.FindAll("[data-standing=Next], [data-standing=Later], [data-testid=loading-now]"));
    }

    /// <summary>Whoever loads sees what is in, whatever keeps the rest from being planned: here a price in the kept plan that no program takes.</summary>
    [Theory]
    [InlineData("steel", "You may go on with them; tell the metallurgist.", false)]
    [InlineData("copper", "Stop, and ask the metallurgist", true)]
    public async Task Sheet_OfARestThatCannotBePlanned_SaysSoAndWhetherTheFirstPlanStays(string code, string words, bool isStopped)
    {
        await WeighIn(code, 20);
        await using (var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation))
        {
            await db.Database.ExecuteSqlAsync($"""DROP TRIGGER "Plans_unchanged" """, Cancellation);
            var asked = StoredJson.Value<ChargeProblem>((await Heat()).Plan.Problem);
            await db.Plans.ExecuteUpdateAsync(set => set.SetProperty(plan => plan.Problem, StoredJson.Text(asked with { SlagCostPerTonne = -1 })), Cancellation);
        }

        var sheet = OpenSheet();

        Assert.Contains("The rest could not be planned anew.", sheet.Find("[data-testid=rest-failed]").TextContent, StringComparison.Ordinal);
        Assert.Contains(words, sheet.Find("[data-testid=rest-failed]").TextContent, StringComparison.Ordinal);
        Assert.Equal(isStopped, sheet.FindAll("[data-testid=loading-closed]").Count > 0);
        Assert.Equal(isStopped, sheet.FindAll("[data-standing=Next]").Count == 0);
        Assert.EndsWith("20.0", sheet.Find($"tr[data-material={code}]").TextContent.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_OfAnyHeat_CarriesEveryCautionAndNothingToSwitchThemOff()
    {
        var cautions = OpenSheet().Find("[data-testid=cautions]");

        Assert.NotNull(cautions.QuerySelector("[data-caution=wet]"));
        foreach (var word in new[] { "wet", "sealed", "Oily", "galvanised", "Bridging", "Carburiser", "hot bath", "preheated pieces", "overfill", "Local codes" })
            Assert.Contains(word, cautions.TextContent, StringComparison.Ordinal);
        Assert.Empty(cautions.QuerySelectorAll("button, input, details, a"));
    }

    [Fact]
    public void Name_WithTheDesignationOfAGrade_IsNotTornApartAtItsHyphens()
    {
        var name = Render<WholeWords>(parameters => parameters.Add(p => p.Text, "Returns of EN-GJS-400-18-LT, sorted"));

        name.MarkupMatches("""Returns of <span class="whole">EN-GJS-400-18-LT,</span> sorted""");
    }

    [Fact]
    public void Sheet_InThePseudoLanguage_HasNoWordOutsideItsTexts()
    {
        Speak(PseudoLanguage.Culture);

        Assert.Empty(Marks.WordsOutside(OpenSheet().Nodes, "Test pig", "Test steel", "Test carbon", "Test fesi", "Test copper", "EN-GJS-500-7", "Furnace 1", "kg", "T"));
    }

    private IRenderedComponent<WeighingSheet> OpenSheet()
    {
        SignIn(Role.Melter);
        var page = Render<WeighingSheet>(parameters => parameters.Add(p => p.HeatId, HeatId));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }
}

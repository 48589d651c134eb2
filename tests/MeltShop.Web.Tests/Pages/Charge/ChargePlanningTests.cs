using MeltShop.Web.Components.Reading;
using Bunit;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Yard;
using MeltShop.Web.Pages.Charge;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;

namespace MeltShop.Web.Tests.Pages.Charge;

public sealed class ChargePlanningTests : ChargeTest
{
    [Fact]
    public void Charge_ChosenInTheAddress_IsPlannedAtOnce()
    {
        var page = OpenPlanned();

        Assert.Contains("steel", InPlan(page));
        Assert.Contains("EUR/t", CostPerTonne(page), StringComparison.Ordinal);
        Assert.Equal(["C", "Si", "Mn", "Cu"], page.FindAll("[data-limit]").Select(row => row.GetAttribute("data-limit")));
        // Manganese sits on its most, and the steel's scatter is far more than the margin.
        Assert.Equal(["in", "in", "close", "in"], page.FindAll(".limit").Select(bar => bar.GetAttribute("data-verdict")));
    }

    [Fact]
    public void Charge_Planned_SaysWhyEachMaterialIsInOrOut()
    {
        var page = OpenPlanned(Role.Metallurgist);

        Assert.Contains("Si ", page.Find("[data-material=fesi] .why").TextContent, StringComparison.Ordinal);
        Assert.Matches(@"would come in at \u2212?[0-9.]+\u00a0EUR/t", page.Find("[data-material=copper] .why").TextContent);
    }

    [Fact]
    public void Charge_Planned_SaysWhereItSitsAndWhatTheLimitCosts()
    {
        var page = OpenPlanned(Role.Metallurgist);

        var silicon = page.Find("[data-limit=Si]");
        Assert.Equal("Min", silicon.GetAttribute("data-binding"));
        Assert.Matches(@"sits on the least \(margin 0.02\u00a0%\). 0.01\u00a0% more costs [0-9.]+\u00a0EUR/t", silicon.TextContent);
    }

    [Fact]
    public void Charge_NothingChosen_SaysWhatToChoose()
    {
        var page = Open("/charge");

        Assert.Contains("Choose a furnace", page.Find("[data-testid=no-plan]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(page.FindAll("button"), button => button.TextContent == "Start the heat");
    }

    [Fact]
    public void Charge_FurnaceAndGradeChosen_GoIntoTheAddressAndThePlanAppears()
    {
        var page = Open("/charge");
        Choose(page, "furnaceId", "F1");
        Choose(page, "gradeId", "EN-GJS-500-7");
        WaitForPlan(page);

        Assert.Equal("?furnace=F1&grade=EN-GJS-500-7&kg=3000", The<QuietAddress>().Here[7..]);
        Assert.Contains("holds 3000\u00a0kg", Field(page, "furnaceId").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Charge_FurnaceNamedByItsIdInALink_IsChosenAndAFullOneOffered()
    {
        var page = Open($"/charge?furnace={FurnaceId}");

        Assert.Equal("F1", Field(page, "furnaceId").QuerySelector("select")!.GetAttribute("value"));
        Assert.Equal("3000", Field(page, "meltKg").QuerySelector("input")!.GetAttribute("value"));
    }

    [Theory]
    [InlineData("-5", "number.tooSmall")]
    [InlineData("lots", "number.notANumber")]
    [InlineData("3001", "furnace.capacity")]
    public void Melt_Wrong_IsToldAtItsFieldAndTheLastPlanStays(string typed, string code)
    {
        var page = OpenPlanned();
        Type(page, "meltKg", typed);

        page.WaitForAssertion(() => Assert.Equal(code, Field(page, "meltKg").QuerySelector(".field-error")!.GetAttribute("data-code")), Patience);
        Assert.Equal(typed, Field(page, "meltKg").QuerySelector("input")!.GetAttribute("value"));
        Assert.Equal("false", page.Find("[data-testid=plan-age]").GetAttribute("data-current"));
        Assert.NotEmpty(InPlan(page));
        Assert.True(page.FindAll("button").Single(button => button.TextContent == "Start the heat").HasAttribute("disabled"));
    }

    [Theory]
    [InlineData("2400,7")]
    [InlineData("2400.7")]
    public void Melt_CommaOrPoint_IsTheSameMass(string typed)
    {
        var page = OpenPlanned();
        Type(page, "meltKg", typed);

        page.WaitForAssertion(() => Assert.Contains("kg=2400.7", The<QuietAddress>().Here, StringComparison.Ordinal), Patience);
        page.WaitForAssertion(() => Assert.Contains("2401\u00a0kg", page.Find("[data-testid=totals]").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public void Charge_ReadByAnInspector_OffersNoStartAndSaysWhoMay()
    {
        var page = OpenPlanned(Role.Inspector);

        Assert.DoesNotContain(page.FindAll("button"), button => button.TextContent == "Start the heat");
        Assert.NotNull(page.Find("[data-testid=read-only]"));
    }

    [Fact]
    public void Charge_AnyPlan_ShowsTheCautionsAndWhoDecides() =>
        Assert.Contains("a qualified person decide", OpenPlanned().Find("[data-testid=cautions]").TextContent, StringComparison.Ordinal);

    [Theory]
    [InlineData("wet")]
    [InlineData("sealed")]
    [InlineData("Oily")]
    [InlineData("galvanised")]
    [InlineData("Bridging")]
    [InlineData("Carburiser low in the cold charge")]
    [InlineData("hot bath")]
    [InlineData("large cold charge")]
    [InlineData("Do not overfill")]
    public void Charge_AnyPlan_ShowsEachCaution(string words) =>
        Assert.Contains(words, OpenPlanned().Find("[data-testid=cautions]").TextContent, StringComparison.Ordinal);

    [Fact]
    public async Task Charge_ManyMaterials_ShowsTheNearestAndTheRestAtAPress()
    {
        for (var i = 0; i < 9; i++) await Add($"nickel-{i}", MaterialKind.FerroAlloy, 15000 + i, 100, new MaterialPercentInput("Ni", 99));
        var page = OpenPlanned();
        var shown = page.FindAll("[data-testid=left-out] tr[data-material]").Count;
        Assert.Equal(6, shown);
        page.Do(() => page.FindAll("button").Single(button => button.TextContent.StartsWith("Show ", StringComparison.Ordinal)).ClickAsync());

        Assert.Equal(14, InPlan(page).Count() + page.FindAll("[data-testid=left-out] tr[data-material]").Count);
    }

    [Fact]
    public async Task Charge_ThatCannotBeRead_SaysSoAndOffersToTryAgain()
    {
        await Break("Furnaces");
        SignIn(Role.Melter);
        var page = Render<ChargePlanning>();
        page.WaitForState(() => page.FindAll("[data-state=failed]").Count > 0, Patience);

        Assert.NotEmpty(page.FindAll("[data-state=failed] button"));
    }

    [Fact]
    public void Charge_InThePseudoLanguage_HasNoWordOutsideItsTexts()
    {
        Speak(PseudoLanguage.Culture);
        var page = OpenPlanned(Role.Metallurgist);

        Assert.Empty(Marks.WordsOutside(
            page.Nodes, "Test pig", "Test steel", "Test carbon", "Test fesi", "Test copper", "EN-GJS-500-7", "Furnace 1", "EUR/t", "EUR/kWh", "EUR", "kg", "kWh/t", "m³",
            "Si", "Mn", "Cu", "C", "S"));
        Assert.NotEmpty(InPlan(page));
    }
}

using System.Globalization;
using System.Text.RegularExpressions;
using Bunit;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Yard;
using MeltShop.Web.Pages.Charge;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>The melter sees what to do; the metallurgist sees why, what if, and other plans.</summary>
public sealed class WhyTests : ChargeTest
{
    [Fact]
    public void Plan_SeenByAMelter_ShowsWhatToDoAndWhyAtAPress()
    {
        var page = OpenPlanned();
        Assert.Empty(page.FindAll("[data-testid=what-ifs], [data-testid=plans], [data-testid=band]"));
        Assert.DoesNotContain("Why", page.Find("[data-testid=in-plan] thead").TextContent, StringComparison.Ordinal);
        page.Find("[data-testid=why]").Click();

        Assert.NotEmpty(page.FindAll("[data-testid=what-ifs]"));
        Assert.Contains("Why", page.Find("[data-testid=in-plan] thead").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Material_InThePlan_SaysOverWhichPriceItStays() =>
        Assert.Matches(@"same plan from \u2212?[0-9.]+ to [0-9.]+\u00a0EUR/t", OpenWhy().Find("[data-testid=in-plan] [data-material=steel] .why").TextContent);

    [Fact]
    public void Material_AtItsMost_SaysWhatMoreOfItWouldSave()
    {
        var page = OpenWhy();
        Change(page, "Test steel");
        page.WaitForElement("[data-field=\"materials.steel.maxKg\"] input", Patience).Change("300");

        // What 10 kg save and what a tonne saves are one price.
        page.WaitForAssertion(() => Assert.Matches(@"at its most · 10\u00a0kg more would save [0-9.]+\u00a0EUR \([0-9.]+\u00a0EUR/t of it\)", page.Find("[data-testid=in-plan] [data-material=steel] .why").TextContent), Patience);
        var numbers = Regex.Match(page.Find("[data-testid=in-plan] [data-material=steel] .why").TextContent, @"would save ([0-9.]+)\u00a0EUR \(([0-9.]+)\u00a0EUR/t");
        Assert.Equal(Number(numbers.Groups[2]) / 100, Number(numbers.Groups[1]), 0.0051);
    }

    [Fact]
    public async Task Material_OfLittleWeightThatIsNoIron_SaysWhatItSuppliesHoweverLittle()
    {
        await Add("coke", MaterialKind.Carburiser, 1, 100, new("C", 98), new("S", 0.9));
        var page = OpenWhy();
        Change(page, "Test coke");
        page.WaitForElement("[data-field=\"materials.coke.maxKg\"] input", Patience).Change("4");

        page.WaitForAssertion(() => Assert.Contains("at its most", page.Find("[data-testid=in-plan] [data-material=coke] .why").TextContent, StringComparison.Ordinal), Patience);
        Assert.Matches(@"supplies C [1-9](\.[0-9])?\u00a0%", page.Find("[data-testid=in-plan] [data-material=coke] .why").TextContent);
        Assert.DoesNotContain("iron that dilutes", page.Find("[data-testid=in-plan] [data-material=coke] .why").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Material_LeftOut_NamesTheLimitsThatKeepItOut()
    {
        // Manganese of this steel is dear where the most of manganese binds.
        await Add("rail", MaterialKind.SteelScrap, 295, 97, new("C", 0.7), new("Mn", 1.6));
        var page = OpenWhy();

        Assert.Matches(@"made dearer by ((C|Si|Mn) [0-9]+\u00a0EUR/t(, )?)+", page.Find("[data-material=copper] .why").TextContent + page.Find("[data-material=rail] .why").TextContent);
    }

    [Fact]
    public void Limit_OfAScatteringQuantity_ShowsItsBandBesideTheVerdict()
    {
        // Steel has 0.1 points of scatter in its manganese.
        var page = OpenWhy();

        Assert.StartsWith("scatter ± 0.", page.Find("[data-limit=Mn] [data-testid=band]").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[data-limit=C] [data-testid=band]"));
    }

    [Fact]
    public void Limits_AskedHowOftenAllHold_AreDrawn()
    {
        var page = OpenWhy();
        Press(page, "How often do all limits hold?");
        page.WaitForState(() => page.FindAll("[data-testid=joint]").Count > 0, Patience);

        Assert.Matches(@"kept in [0-9.]+\u00a0% of the heats \(20000 heats drawn.*Mn: [0-9.]+\u00a0%\.", page.Find("[data-testid=joint]").TextContent);
    }

    [Fact]
    public async Task Material_ThatRunsOut_SaysWhetherThatCostsOrMakesItImpossible()
    {
        // Pig iron has 4.2 % of carbon, and only steel dilutes it to 3.8 %.
        var page = OpenWhy();
        Press(page, "What if Test steel runs out?");
        Assert.Equal("Without Test steel no charge from this yard meets these limits.", page.WaitForElement("[data-testid=run-out] p", Patience).TextContent);

        // Rails of the same analysis and yield at 40 EUR more do as well, at 40 EUR more for each tonne of steel.
        await Add("rail", MaterialKind.SteelScrap, 340, 97, new("C", 0.1), new("Si", 0.2), new("Mn", 0.6, 0.1), new("S", 0.02));
        page = OpenWhy();
        var steelKg = page.Find("[data-testid=in-plan] [data-material=steel] td.number").TextContent;
        Press(page, "What if Test steel runs out?");
        var costs = Regex.Match(page.WaitForElement("[data-testid=run-out] p", Patience).TextContent, @"^Without Test steel the charge costs ([0-9.]+)\u00a0EUR more\.$");
        Assert.Equal(Number(Regex.Match(steelKg, "[0-9.]+")) * 0.04, Number(costs.Groups[1]), 0.05);
    }

    /// <summary>Returns at 150 EUR are the cheapest of all, and no scrap.</summary>
    [Fact]
    public async Task Material_ThatRunsOut_IsTheCheapestScrapOrTheChosenOne()
    {
        await Add("returns", MaterialKind.Returns, 150, 97, new("C", 3.6), new("Si", 1.5), new("Mn", 0.2));
        var page = OpenWhy();
        Assert.Contains("the cheapest: Test returns", Field(page, "runsOut").TextContent, StringComparison.Ordinal);
        Change(page, "Test steel");
        page.WaitForElement("[data-field=\"materials.steel.minKg\"] input", Patience).Change("300");
        page.WaitForState(() => page.FindAll("button").Any(button => button.TextContent == "What if Test steel runs out?"), Patience);
        Assert.Contains("the cheapest scrap: Test steel", Field(page, "runsOut").TextContent, StringComparison.Ordinal);

        Choose(page, "runsOut", "returns");
        Press(page, "What if Test returns runs out?");
        Assert.StartsWith("Without Test returns the charge costs ", page.WaitForElement("[data-testid=run-out] p", Patience).TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_OfAnEarlierPlan_GoesWhenThePlanChanges()
    {
        var page = OpenWhy();
        Press(page, "How often do all limits hold?");
        page.WaitForState(() => page.FindAll("[data-testid=joint]").Count > 0, Patience);
        Type(page, "meltKg", "2990");

        page.WaitForState(() => page.FindAll("[data-testid=joint]").Count == 0, Patience);
    }

    [Fact]
    public void Heel_ComparedWithADrainedFurnace_AsksForItsWorthAndSaysWhatItSavesOrCosts()
    {
        var page = OpenWhy();
        Type(page, "heelKg", "300");
        WaitForPlan(page);
        page.WaitForState(() => page.FindAll("[data-field=worthPerTonne]").Count > 0, Patience);
        Press(page, "Compare");
        Assert.Equal("number.missing", Field(page, "worthPerTonne").QuerySelector(".field-error")!.GetAttribute("data-code"));
        Type(page, "worthPerTonne", "250");
        Press(page, "Compare");
        page.WaitForState(() => page.FindAll("[data-testid=drained]").Count > 0, Patience);

        // 300 kg of iron of which nothing was measured are pure iron, which only has to be carburised; as returns they are worth less than new metal costs.
        Assert.Matches(@"Draining 300\u00a0kg first costs [0-9.]+\u00a0EUR more", page.Find("[data-testid=drained]").TextContent);
        Type(page, "worthPerTonne", "2000");
        page.WaitForState(() => page.FindAll("[data-testid=drained]").Count == 0, Patience);
        Press(page, "Compare");

        page.WaitForState(() => page.FindAll("[data-testid=drained]").Count > 0, Patience);
        Assert.Matches(@"Draining 300\u00a0kg first saves [0-9.]+\u00a0EUR", page.Find("[data-testid=drained]").TextContent);
    }

    [Fact]
    public void Heel_WithoutWhichTheChargeIsImpossible_IsNotSaidToBeNoHelp()
    {
        // Of pig iron and steel there are 500 kg each: enough beside a heel of 2600 kg, and not for 3000 kg.
        var page = OpenWhy();
        Type(page, "heelKg", "2600");
        foreach (var code in new[] { "pig", "steel" })
        {
            Change(page, "Test " + code);
            page.WaitForElement($"[data-field=\"materials.{code}.maxKg\"] input", Patience).Change("500");
        }

        foreach (var (quantity, least) in new[] { ("C", "0.1"), ("Si", "0") })
        {
            Change(page, quantity);
            page.WaitForElement($"[data-field=\"limits.{quantity}.least\"] input", Patience).Change(least);
        }

        page.WaitForState(() => page.FindAll("[data-testid=plan-age][data-current=true]").Count > 0 && page.FindAll("[data-testid=infeasible]").Count == 0, Patience);
        page.WaitForElement("[data-field=worthPerTonne] input", Patience).Change("250");
        Press(page, "Compare");

        Assert.Equal("It can be met with the heel, and not with the heel drained.", page.WaitForElement("[data-testid=drained]", Patience).TextContent);
    }

    [Fact]
    public void Charge_Impossible_SaysWhatWouldMakeItPossible()
    {
        var page = OpenWhy();
        foreach (var code in new[] { "pig", "carbon" })
        {
            Change(page, "Test " + code);
            page.Find("[data-testid=material-choices] input[type=checkbox]").Change(true);
        }

        page.WaitForState(() => page.FindAll("[data-testid=infeasible]").Count > 0, Patience);
        Press(page, "What would make it possible?");
        page.WaitForState(() => page.FindAll("[data-testid=to-buy]").Count > 0, Patience);

        // Without pig iron and carburiser there is no carbon but what one buys.
        Assert.Contains("C", page.Find("[data-buy=ideal]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Plans_AskedFor_AreSeveralAndOneCanBeTaken()
    {
        var page = OpenWhy();
        Press(page, "Show them");
        page.WaitForState(() => page.FindAll("[data-plan]").Count > 0, Patience);
        Assert.Equal(["Cheapest", "FewestMaterials", "Safest"], page.FindAll("[data-plan]").Select(row => row.GetAttribute("data-plan")));
        Assert.All(page.FindAll("[data-plan]"), plan => Assert.Contains("Test steel", plan.QuerySelector(".plan-lines td[colspan='6']")!.TextContent, StringComparison.Ordinal)); // as wide as the table
        page.WaitForElement("[data-field=mostDearerPercent] input", Patience).Change("7");
        page.WaitForState(() => page.FindAll("[data-plan]").Count == 0, Patience);
        Press(page, "Show them");
        page.WaitForElement("[data-plan=Safest] button", Patience).Click();

        page.WaitForState(() => page.FindAll("[data-testid=hand-news][data-holds=true]").Count > 0, Patience);
        Assert.Contains("Taken from the plans: Surest", page.Find("[data-testid=by-hand]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Element_ThatTheGradeDoesNotName_CanBeLimitedForThisCharge()
    {
        var page = OpenWhy();
        Assert.Empty(page.FindAll("[data-limit=S]"));
        Assert.DoesNotContain(Field(page, "otherLimit").QuerySelectorAll("option"), option => option.GetAttribute("value") == "C"); // the grade limits it already
        Choose(page, "otherLimit", "S");
        page.WaitForElement("[data-field=\"limits.S.most\"] input", Patience).Change("0.015");

        page.WaitForState(() => page.FindAll("[data-limit=S] .limit").Count > 0, Patience);
        Assert.Contains("the grade sets none", Field(page, "limits.S.least").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Quantity_DerivedFromTheAnalysis_CanBeLimitedInItsUnit()
    {
        var page = OpenWhy();
        Assert.DoesNotContain(Field(page, "otherLimit").QuerySelectorAll("option"), option => option.GetAttribute("value") == "ferritePercent"); // of the poured iron only
        Choose(page, "otherLimit", "liquidusC");
        page.WaitForElement("[data-field=\"limits.liquidusC.most\"] input", Patience).Change("1300");

        page.WaitForState(() => page.FindAll("[data-limit=liquidusC] .limit").Count > 0, Patience);
        Assert.Contains("°C", page.Find("[data-limit=liquidusC]").TextContent, StringComparison.Ordinal);
        Type(page, "limits.liquidusC.most", "9000");
        page.WaitForAssertion(() => Assert.Equal("number.tooLarge", Field(page, "limits.liquidusC.most").QuerySelector(".field-error")!.GetAttribute("data-code")), Patience);
    }

    [Fact]
    public void Costs_UnderAWish_AreNotCalledMoneyAlone()
    {
        var page = OpenWhy();
        Assert.Empty(page.FindAll("[data-testid=steered]"));
        Type(page, "wishes.nearnessPrice", "50");

        page.WaitForState(() => page.FindAll("[data-testid=steered]").Count == 2, Patience);
    }

    [Fact]
    public void Ledger_BelowNothing_IsSaidAndNotHidden()
    {
        SignIn(Role.Melter);
        var card = Render<HeelCard>(parameters => parameters.Add(c => c.Furnace, new(1, "F1", "Furnace 1", 3000, 1800, null, -20, null, null)).Add(c => c.Counting, []));

        Assert.Equal("! By the ledger \u221220.0\u00a0kg: it is reckoned with as empty. Dip it, or enter the heel.", card.Find("[data-testid=ledger-below]").TextContent);
    }

    [Fact]
    public void Kind_ThatClashesWithTheMasses_IsNamed()
    {
        var page = OpenWhy();
        Type(page, "groups.PigIron.maxKg", "1000");
        Change(page, "Test steel");
        page.WaitForElement("[data-field=\"materials.steel.maxKg\"] input", Patience).Change("100");
        foreach (var code in new[] { "carbon", "fesi", "copper" })
        {
            Change(page, "Test " + code);
            page.WaitForElement($"[data-field=\"materials.{code}.maxKg\"] input", Patience).Change("100");
        }

        page.WaitForAssertion(() => Assert.Matches("Masses and shares do not give 3000\u00a0kg beside Pig iron; [0-9]+\u00a0kg is the nearest", page.Find("[data-clash=meltKg]").TextContent), Patience);
    }

    [Fact]
    public void Kind_Bounded_IsKeptAndShown()
    {
        var page = OpenWhy();
        Type(page, "groups.PigIron.minPercent", "70");
        page.WaitForState(() => page.FindAll("[data-testid=rooms] [data-group=PigIron]").Count > 0, Patience);

        Assert.Contains("70\u00a0% of the charge", page.Find("[data-testid=rooms] [data-group=PigIron]").TextContent, StringComparison.Ordinal);
        Assert.Matches(@"at its least share · 1\u00a0% less would save [0-9.]+\u00a0EUR \([0-9.]+\u00a0EUR/t of new liquid\)$", page.Find("[data-testid=rooms] [data-group=PigIron] span").TextContent);
    }

    [Fact]
    public void Room_OfMaterialsWithoutABulkDensity_SaysWhatIsNotCounted()
    {
        var page = OpenWhy();
        Type(page, "wishes.bucketM3", "2");
        page.WaitForState(() => page.FindAll("[data-testid=rooms] [data-room=bucket]").Count > 0, Patience);

        Assert.Contains("not counted: Test", page.Find("[data-testid=rooms] [data-room=bucket]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Slag_Priced_IsPartOfTheCost()
    {
        var page = OpenWhy();
        Type(page, "wishes.slagCostPerTonne", "80");
        page.WaitForState(() => page.FindAll("[data-testid=cost-parts]").Count > 0, Patience);

        Assert.Matches(@"materials [0-9.]+, slag [0-9.]+, energy 0.00\u00a0EUR", page.Find("[data-testid=cost-parts]").TextContent);
    }

    [Fact]
    public void Rule_KeptForTheShop_CountsInTheNextPlanOfAnybody()
    {
        var page = OpenWhy();
        Type(page, "wishes.slagCostPerTonne", "80");
        Press(page, "Keep these for the shop");
        page.WaitForState(() => page.FindAll("[data-testid=rule-kept]").Count > 0, Patience);
        var next = OpenPlanned();

        Assert.NotEmpty(next.FindAll("[data-testid=cost-parts]"));
        Assert.Contains("the shop says 80", Field(next, "wishes.slagCostPerTonne").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(next.FindAll("button"), button => button.TextContent == "Keep these for the shop");
    }

    [Fact]
    public void Room_KeptForTheFurnace_CountsInTheNextPlanUntilItIsTakenAway()
    {
        var page = OpenWhy();
        Type(page, "wishes.furnaceM3", "20");
        page.WaitForElement("[data-testid=room-keep]", Patience).Click();
        page.WaitForAssertion(() => Assert.Contains("the furnace has 20", Field(page, "wishes.furnaceM3").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal("", Field(page, "wishes.furnaceM3").QuerySelector("input")!.GetAttribute("value") ?? "");
        var next = OpenWhy();
        Assert.Contains("20.00\u00a0m³", next.Find("[data-testid=rooms] [data-room=furnace]").TextContent, StringComparison.Ordinal);
        next.WaitForElement("[data-testid=room-keep]", Patience).Click();

        next.WaitForState(() => next.FindAll("[data-room=furnace], [data-testid=room-keep]").Count == 0, Patience);
    }

    [Fact]
    public void Rule_TakenAway_CountsNoLonger()
    {
        var page = OpenWhy();
        Type(page, "wishes.bucketM3", "20");
        Press(page, "Keep these for the shop");
        page.WaitForElement("[data-testid=rule-only]", Patience);
        Type(page, "wishes.bucketM3", "");
        Type(page, "wishes.slagCostPerTonne", "80");
        page.WaitForElement("[data-testid=rule-only]", Patience).Click();
        page.WaitForAssertion(() => Assert.DoesNotContain("the shop says 20", Field(page, "wishes.bucketM3").TextContent, StringComparison.Ordinal), Patience);
        var next = OpenPlanned();

        next.WaitForAssertion(() => Assert.Contains("the shop says 80", Field(next, "wishes.slagCostPerTonne").TextContent, StringComparison.Ordinal), Patience);
        Assert.Empty(next.FindAll("[data-room=bucket]"));
    }

    private static double Number(Capture text) => double.Parse(text.Value, CultureInfo.InvariantCulture);

    private IRenderedComponent<ChargePlanning> OpenWhy() => OpenPlanned(Role.Metallurgist);
}

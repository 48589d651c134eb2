using Bunit;
using MeltShop.Operations.Charging;
using MeltShop.Records.People;
using MeltShop.Records.Yard;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>Plans with most returns and as last time, and over which prices a plan stays.</summary>
public sealed class OtherPlansTests : ChargeTest
{
    [Fact]
    public async Task Plans_OfAYardWithReturns_HaveOneThatUsesMostOfThem()
    {
        await AddReturns(600);
        var page = OpenPlanned(Role.Metallurgist);
        Assert.DoesNotContain("returns", InPlan(page));
        page.WaitForElement("[data-field=mostDearerPercent] input", Patience).Change("15");
        Press(page, "Show them");
        page.WaitForElement("[data-plan=MostReturns] button", Patience).Click();

        page.WaitForState(() => page.FindAll("[data-testid=hand-news][data-holds=true]").Count > 0, Patience);
        Assert.Contains("Taken from the plans: Most returns", page.Find("[data-testid=by-hand]").TextContent, StringComparison.Ordinal);
        var kg = page.Find("[data-field=\"byHand.returns\"] input").GetAttribute("value")!;
        Assert.True(double.Parse(kg, System.Globalization.CultureInfo.InvariantCulture) > 100, kg);
    }

    [Fact]
    public async Task Plans_AfterAHeatOfTheGrade_HaveOneAsLastTime()
    {
        await AddReturns(240);
        var choice = new ChargeChoice(FurnaceId, GradeId, 3000);
        var plan = (await The<PlanCharge>().Run(Founder, new(Guid.NewGuid(), Now, choice), Cancellation)).Value.PlanId;
        Assert.True((await The<StartHeat>().Run(Founder, new(Guid.NewGuid(), Now, plan), Cancellation)).Succeeded);
        var page = Open("/charge?furnace=F1&grade=EN-GJS-500-7&kg=3000", Role.Metallurgist);
        // The heat is still in the furnace: what it leaves is said by a person.
        page.WaitForElement("[data-field=heelKg] input", Patience).Change("0");
        WaitForPlan(page);
        Change(page, "Test returns");
        page.WaitForElement("[data-field=\"materials.returns.pricePerTonne\"] input", Patience).Change("900");
        page.WaitForState(() => page.FindAll("[data-testid=plan-age][data-current=true]").Count > 0 && !InPlan(page).Contains("returns"), Patience);
        Press(page, "Show them");

        page.WaitForAssertion(() => Assert.Contains("Test returns", page.Find("[data-plan=AsLastTime]").TextContent, StringComparison.Ordinal), Patience);
        Assert.DoesNotContain("Test returns", page.Find("[data-plan=Cheapest]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_UnderConfidence_SaysWhereAnyPriceMovesIt()
    {
        var page = OpenPlanned(Role.Metallurgist);
        Type(page, "confidencePercent", "90");
        Change(page, "Mn");
        page.WaitForElement("[data-field=\"limits.Mn.most\"] input", Patience).Change("0.25");

        page.WaitForAssertion(() => Assert.All(
            page.FindAll("[data-testid=in-plan] .why"), why => Assert.Matches("same plan|any change of its price changes the plan a little", why.TextContent)), Patience);
    }

    private Task AddReturns(decimal price) => Add("returns", MaterialKind.Returns, price, 98, new("C", 3.6), new("Si", 1.5), new("Mn", 0.25));
}

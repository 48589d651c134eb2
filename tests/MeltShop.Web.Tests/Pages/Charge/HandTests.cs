using Bunit;
using MeltShop.Operations.Charging;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Charge;
using MeltShop.Web.Pages.Charge;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>A charge made by hand is checked and not changed.</summary>
public sealed class HandTests : ChargeTest
{
    [Fact]
    public void Charge_MadeByHand_BeginsWithThePlanAndKeepsEveryMassThatIsTyped()
    {
        var page = Made(tolerance: "30");
        Assert.Equal("true", page.Find("[data-testid=hand-news]").GetAttribute("data-holds"));
        Type(page, "byHand.pig", "3000");
        page.WaitForState(() => page.FindAll("[data-missed=LiquidKg]").Count > 0, Patience);

        Assert.Equal("3000", Mass(page, "pig"));
        Assert.Matches("It will be [0-9]+\u00a0kg of liquid; the most is 2830\u00a0kg", page.Find("[data-missed=LiquidKg]").TextContent);
        Assert.Equal("This charge was made by hand. It is checked, not changed.", page.Find("[data-testid=plan-age]").TextContent);
    }

    [Fact]
    public void Charge_MadeByHandThatMissesALimit_IsNotShownAsMeetingIt()
    {
        var page = Made(tolerance: "200");
        Type(page, "byHand.copper", "20");
        page.WaitForState(() => page.FindAll("[data-missed=Cu]").Count > 0, Patience);

        // 20 kg of 99 % copper in about 2800 kg: 0.7 % beside a most of 0.10 %.
        Assert.Matches(@"Cu will be 0\.7[0-9]\u00a0%; the most is 0\.10\u00a0%, 0\.6[0-9]\u00a0% too much", page.Find("[data-missed=Cu]").TextContent);
        Assert.Equal("high", page.Find("[data-limit=Cu] .limit").GetAttribute("data-verdict"));
        Assert.Matches(@"It costs [0-9.]+\u00a0EUR/t; the cheapest costs [0-9.]+\u00a0EUR/t", page.Find("[data-testid=hand-cost]").TextContent);
    }

    [Fact]
    public void Charge_MadeByHandThatMissesALimit_IsNotKeptForAMelter()
    {
        var page = Made(tolerance: "200");
        Type(page, "byHand.copper", "20");
        page.WaitForState(() => page.FindAll("[data-missed=Cu]").Count > 0, Patience);
        Press(page, "Keep the plan");

        page.WaitForState(() => page.FindAll("[data-code=\"plan.misses\"]").Count > 0, Patience);
        Assert.Empty(page.FindAll("[data-testid=kept]"));
    }

    /// <summary>For nobody: a metallurgist may answer for what a charge misses, and not for metal that has no room.</summary>
    [Fact]
    public void Charge_MadeByHandThatOverfillsTheFurnace_IsKeptForNobodyAndIsNotTooCloseToTell()
    {
        var page = Made(role: Role.Metallurgist);
        Type(page, "byHand.pig", "4000");
        page.WaitForState(() => page.FindAll("[data-missed=LiquidKg]").Count > 0, Patience);
        Assert.Equal("high", page.Find("[data-limit=C] .limit").GetAttribute("data-verdict"));
        Assert.Empty(page.FindAll("[data-testid=too-close]"));
        Press(page, "Keep the plan");

        Assert.Matches("This charge makes 6[0-9]{3}\u00a0kg of liquid, heel included; the furnace holds 3000\u00a0kg", page.WaitForElement("[data-code=\"furnace.overfilled\"]", Patience).TextContent);
        Assert.Empty(page.FindAll("[data-testid=kept]"));
    }

    [Fact]
    public void Mass_MistypedByHand_IsToldAtItsFieldAndNothingIsLost()
    {
        var page = Made();
        Type(page, "byHand.steel", "a lot");

        Assert.Equal("number.notANumber", Field(page, "byHand.steel").QuerySelector(".field-error")!.GetAttribute("data-code"));
        Assert.Equal("a lot", Mass(page, "steel"));
        Assert.Equal("false", page.Find("[data-testid=plan-age]").GetAttribute("data-current"));
    }

    [Fact]
    public void Charge_MadeByHand_CanBeGivenBackToThePlan()
    {
        var page = OpenPlanned();
        var before = CostPerTonne(page);
        Press(page, "Make it by hand");
        page.WaitForState(() => page.FindAll("[data-testid=by-hand]").Count > 0, Patience);
        Press(page, "Back to the cheapest plan");

        page.WaitForState(() => page.FindAll("[data-testid=in-plan]").Count > 0, Patience);
        page.WaitForAssertion(() => Assert.Equal(before, CostPerTonne(page)), Patience);
    }

    [Fact]
    public async Task Plan_MadeByHand_SaysSoWhenItIsOpenedAgain()
    {
        var page = Made(tolerance: "200", role: Role.Metallurgist);
        Type(page, "byHand.copper", "20");
        page.WaitForState(() => page.FindAll("[data-missed=Cu]").Count > 0, Patience);
        Press(page, "Keep the plan");
        page.WaitForState(() => page.FindAll("[data-testid=kept]").Count > 0, Patience);
        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        var id = await db.Plans.Select(plan => plan.Id).SingleAsync(Cancellation);
        var kept = Render<KeptPlan>(parameters => parameters.Add(p => p.PlanId, id));
        kept.WaitForState(() => kept.FindAll("[data-testid=made-by-hand]").Count > 0, Patience);

        Assert.NotEmpty(kept.FindAll("[data-testid=hand-news] [data-missed=Cu]"));
        Assert.Equal("true", kept.Find("[data-testid=again]").GetAttribute("data-same"));
        Assert.NotNull(StoredChoice.Of((await The<ChargePage>().Plan(id, Cancellation))!)!.ByHand);
    }

    private IRenderedComponent<ChargePlanning> Made(string tolerance = "", string role = Role.Melter)
    {
        var page = OpenPlanned(role);
        if (tolerance.Length > 0)
        {
            Type(page, "meltKg", "2800"); // the furnace holds 3000
            Type(page, "meltToleranceKg", tolerance);
            WaitForPlan(page);
        }

        Press(page, "Make it by hand");
        page.WaitForState(() => page.FindAll("[data-testid=by-hand]").Count > 0 && page.FindAll("[data-testid=hand-news]").Count > 0, Patience);
        page.InvokeAsync(() => page.FindAll("[data-testid=by-hand] button").Single(button => button.TextContent.StartsWith("Show ", StringComparison.Ordinal)).Click());
        page.WaitForState(() => page.FindAll("[data-field=\"byHand.copper\"]").Count > 0, Patience);
        return page;
    }

    private static string? Mass(IRenderedComponent<ChargePlanning> page, string code) => Field(page, $"byHand.{code}").QuerySelector("input")!.GetAttribute("value");
}

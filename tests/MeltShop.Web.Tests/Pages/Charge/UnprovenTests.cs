using Bunit;
using MeltShop.Charging.Workers;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Yard;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>Whole pieces whose worker dies: what was not proven is not said, neither of a plan nor of there being none.</summary>
[Collection(nameof(Alone))]
public sealed class UnprovenTests : ChargeTest
{
    [Fact]
    public async Task Search_WithoutAPlanOrAProof_SaysSoAndShowsTheUncutCharge()
    {
        await Empty("pig", "steel", "carbon", "fesi", "copper");
        Lose();
        var page = Open(role: Role.Metallurgist);
        WaitForPlan(page);

        // 247.5 kg of liquid a piece: 3000 kg are no whole number of them, and without its worker nobody proves it.
        var news = page.Find("[data-testid=not-found]");
        Assert.Contains("The process that looks for whole pieces was lost", news.TextContent, StringComparison.Ordinal);
        Assert.Contains("Test ingot 3030\u00a0kg", page.Find("[data-testid=uncut]").TextContent, StringComparison.Ordinal);
        Assert.Contains("383.84\u00a0EUR/t", news.TextContent, StringComparison.Ordinal); // 380 / 0.99
        Assert.Equal("No charge was found for what is chosen.", page.Find("[data-testid=plan-age]").TextContent);
        Assert.DoesNotContain("No charge from this yard", page.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain(page.FindAll("button"), button => button.TextContent == "What would make it possible?");
        Assert.Single(page.FindAll("[data-testid=again]"));

        Press(page, "Make it by hand");
        page.WaitForElement("[data-field=\"byHand.ingot\"] input", Patience).Change("3000");
        page.WaitForAssertion(() => Assert.Equal("true", page.Find("[data-testid=hand-news]").GetAttribute("data-holds")), Patience); // 12 pieces, within 1 % of the melt
    }

    [Fact]
    public async Task Search_WithoutAPlanOrAProof_IsNotKeptAsImpossible()
    {
        await Empty("pig", "steel", "carbon", "fesi", "copper");
        Lose();

        var outcome = await The<PlanCharge>().Run(Founder, new(Guid.NewGuid(), Now, new ChargeChoice(FurnaceId, GradeId, 3000)), Cancellation);

        Assert.Equal("plan.notFound", Assert.Single(outcome.Findings).Code);
    }

    [Fact]
    public void Plan_NotProven_IsNotCalledTheCheapestAndStatesItsGap()
    {
        Lose();
        var page = OpenPlanned();

        Assert.Equal("This is the best charge that was found for what is chosen.", page.Find("[data-testid=plan-age]").TextContent);
        Assert.Matches(@"^! The process that looks for whole pieces was lost before .* It could be at most [0-9]+\.[0-9]+\u00a0% cheaper\.$", page.Find("[data-testid=unproven]").TextContent);
    }

    [Fact]
    public void RunOut_OfSearchesThatWereLost_SaysThatNeitherChargeIsProven()
    {
        Lose();
        var page = OpenPlanned(Role.Metallurgist);
        page.Do(() => page.FindAll("[data-testid=what-ifs] button").Single(button => button.TextContent.StartsWith("What if Test ", StringComparison.Ordinal)).ClickAsync());

        Assert.EndsWith("Not both charges are proven to be the cheapest.", page.WaitForElement("[data-testid=run-out] p", Patience).TextContent, StringComparison.Ordinal);
    }

    protected override async Task Prepare()
    {
        await base.Prepare();
        var id = (await The<AddMaterial>().Run(Founder, new(
            Guid.NewGuid(), Now, "ingot", "Test ingot", MaterialKind.PigIron, MaterialUses.Charge, 380, 99, [new("C", 3.65), new("Si", 1.5), new("Mn", 0.1)], "Test figures", "memory", PieceKg: 250))).Value;
        await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now, id, StockKind.Counted, 5000));
    }

    protected override void Dispose(bool disposing)
    {
        PieceWorkers.Use(null);
        base.Dispose(disposing);
    }

    /// <summary>A worker that dies of every question.</summary>
    private static void Lose() => PieceWorkers.Use(new("/bin/sh", "-c", "read line; exit 1"));

    private async Task Empty(params string[] codes)
    {
        foreach (var code in codes) Assert.True((await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now.AddMinutes(1), MaterialIds[code], StockKind.Counted, 0), Cancellation)).Succeeded);
    }
}

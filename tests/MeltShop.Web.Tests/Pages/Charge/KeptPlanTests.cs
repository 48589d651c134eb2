using Bunit;
using MeltShop.Charging.Plans;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Pages.Charge;

public sealed class KeptPlanTests : MeltingShop
{
    [Fact]
    public async Task Plan_OpenedAfterPricesAndAnalysesChanged_GivesTheNumbersThatWereKept()
    {
        var id = await Keep();
        var before = Totals(Open(id));
        await ChangeTheYard();
        var page = Open(id);

        Assert.Equal(before, Totals(page));
        Assert.Equal("true", page.Find("[data-testid=again]").GetAttribute("data-same"));
        Assert.Contains("300.00", page.Find("tr[data-material=steel]").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll(".limit"));
        Assert.Matches("^0.01\u00a0% more (costs|saves) ", page.Find("[data-cost=C]").TextContent);
        Assert.Matches(@"^Liquid, heel included as asked · 10\u00a0kg more would cost [0-9.]+\u00a0EUR \([0-9.]+\u00a0EUR/t of it\)$", page.Find("[data-bound=LiquidKg]").TextContent);
    }

    [Fact]
    public async Task Plan_Recomputed_DiffersByLessThanAMillionth()
    {
        var kept = (await The<ChargePage>().Plan(await Keep(), Cancellation))!;
        await ChangeTheYard();
        var again = PlanAgain.Of(kept, Cancellation);

        Assert.True(again.Difference <= 1e-6, $"{again.Difference}");
        Assert.NotEmpty(again.Now.Lines);
        // The same plan with another price in what is kept is another plan: the comparison can fail.
        Assert.False(PlanAgain.Of(kept with { Problem = kept.Problem.Replace("\"PricePerTonne\":300", "\"PricePerTonne\":999", StringComparison.OrdinalIgnoreCase) }, Cancellation).IsSame);
    }

    [Fact]
    public async Task Plan_Kept_NamesItsMaterialsAndKeepsApartWhatItDidNotTake()
    {
        var page = Open(await Keep());

        Assert.Equal("Test steel", page.Find("[data-testid=kept-materials] > .sheet-frame tr[data-material=steel] th").TextContent);
        Assert.Equal("Test copper", page.Find("[data-testid=could-choose] tr[data-material=copper] th").TextContent);
        Assert.Empty(page.FindAll("[data-testid=kept-materials] > .sheet-frame tr[data-material=copper]"));
    }

    [Fact]
    public async Task Plan_ThatLeftBinsOut_NamesThem()
    {
        Assert.Empty(Open(await Keep()).FindAll("[data-testid=left-out-bins]"));
        var id = (await The<PlanCharge>().Run(
            Founder, new(Guid.NewGuid(), Now, new ChargeChoice(FurnaceId, GradeId, 2000) { LeftOutBins = ["4", "7"] }), Cancellation)).Value.PlanId;

        Assert.Equal("Bins left out, as if nothing lay in them: 4, 7", Open(id).Find("[data-testid=left-out-bins]").TextContent);
    }

    [Fact]
    public async Task Plan_Kept_SaysInWordsWhatMadeIt()
    {
        var words = Open(await Keep()).Find("[data-testid=versions]").TextContent;

        Assert.Contains("carbon equivalent C + (Si + P)/3, analyses of materials: 5", words, StringComparison.Ordinal);
        Assert.DoesNotContain("{", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Limit_OfThreeDecimals_IsPricedForAStepOnItsLast()
    {
        var kept = PlanAgain.Of((await The<ChargePage>().Plan(await Keep(), Cancellation))!, Cancellation);
        var planned = new PlannedCharge(kept.Problem, kept.Kept with { Limits = [new("S", 0.013, null, 0.014, BindingBound.Max, -2) { LoweredCost = 10 }] });
        var page = Render<PlanLimits>(parameters => parameters
            .Add(p => p.Planned, planned).Add(p => p.Rows, []).Add(p => p.Draft, new ChargeDraft()).Add(p => p.Currency, "EUR").Add(p => p.IsWhyShown, true));

        // 2 EUR less for 0.01 % and 2000 kg are 1 EUR/t, and a tenth of that for 0.001 %. Less of it costs five times as much as more saves.
        Assert.Contains("0.001\u00a0% more saves 0.10\u00a0EUR/t. 0.001\u00a0% less costs 0.50\u00a0EUR/t.", page.Find("[data-limit=S]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_WithAHeat_LinksToIt()
    {
        var id = await Keep();
        var heat = (await The<StartHeat>().Run(Founder, new(Guid.NewGuid(), Now, id), Cancellation)).Value;

        Assert.Equal($"/heats/{heat.HeatId}", Open(id).Find($"a[data-heat='{heat.Number}']").GetAttribute("href"));
    }

    [Fact]
    public async Task Plan_WithoutAHeat_StartsOneFromItsPage()
    {
        var id = await Keep();
        var page = Open(id);
        page.Do(() => page.FindAll("button").Single(button => button.TextContent == "Start the heat").ClickAsync());
        Assert.Empty(page.FindAll("[data-testid=start-out-of-date]"));
        Assert.Contains("EN-GJS-500-7, 2000\u00A0kg in Furnace 1", page.Find("[data-testid=start-ask]").TextContent, StringComparison.Ordinal);
        page.Do(() => page.FindAll("button").Single(button => button.TextContent == "Yes, start the heat").ClickAsync());

        page.WaitForAssertion(() => Assert.Contains("/heats/", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal), Patience);
        var heat = Assert.Single((await The<ChargePage>().Plan(id, Cancellation))!.Heats);
        Assert.DoesNotContain("Start the heat", Open(id).Markup, StringComparison.Ordinal);
        Assert.EndsWith($"/heats/{heat.Id}", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_SeenByWhoMayNotStart_OffersNoStart()
    {
        var id = await Keep();
        SignIn(Role.Inspector);
        var page = Render<KeptPlan>(parameters => parameters.Add(p => p.PlanId, id));
        page.WaitForState(() => page.FindAll("[data-testid=again]").Count > 0, Patience);

        Assert.DoesNotContain("Start the heat", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_WhoseAnalysisWasCorrectedSince_IsMarkedAsOutOfDate()
    {
        var id = await Keep();
        Assert.Empty(Open(id).FindAll("[data-testid=stale]"));
        await ChangeTheYard();
        var page = Open(id);
        page.Do(() => page.FindAll("button").Single(button => button.TextContent == "Start the heat").ClickAsync());

        Assert.Contains("out of date", page.Find("[data-testid=start-out-of-date]").TextContent, StringComparison.Ordinal);
        Assert.Contains("another delivery", page.Find("[data-stale=Analysis]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_Unknown_SaysSo()
    {
        SignIn(Role.Melter);
        var page = Render<KeptPlan>(parameters => parameters.Add(p => p.PlanId, 999));

        page.WaitForState(() => page.FindAll("[data-state=missing]").Count > 0, Patience);
    }

    private async Task<long> Keep() =>
        (await The<PlanCharge>().Run(Founder, new(Guid.NewGuid(), Now, new ChargeChoice(FurnaceId, GradeId, 2000, ConfidencePercent: 90)), Cancellation)).Value.PlanId;

    private async Task ChangeTheYard()
    {
        var steel = (await The<YardPage>().Material(MaterialIds["steel"], Cancellation))!;
        var version = (await The<ChangePrice>().Run(Founder, new(Guid.NewGuid(), Now, steel.Id, steel.Version, 777), Cancellation)).Value;
        await The<CorrectAnalysis>().Run(
            Founder, new(Guid.NewGuid(), Now, steel.Id, version, [new("C", 0.9), new("Mn", 1.2)], "Test figures", "memory", "another delivery"), Cancellation);
    }

    private IRenderedComponent<KeptPlan> Open(long id)
    {
        SignIn(Role.Melter);
        var page = Render<KeptPlan>(parameters => parameters.Add(p => p.PlanId, id));
        page.WaitForState(() => page.FindAll("[data-testid=again]").Count > 0, Patience);
        return page;
    }

    private static string Totals(IRenderedComponent<KeptPlan> page) =>
        page.Find("[data-testid=totals]").TextContent + page.Find("[data-testid=kept-materials]").TextContent;
}

using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Web.Pages.Charge;

namespace MeltShop.Web.Tests.Pages.Charge;

public sealed class LivePlanTests
{
    [Fact]
    public async Task Question_AskedWhileAnotherIsPlanned_TakesItsPlace()
    {
        using var live = new LivePlan(TimeProvider.System);
        await live.Ask(Iron(1));
        var superseded = live.Ask(Iron(2));
        Assert.False(live.IsCurrent);
        Assert.Equal(1, live.Last!.Plan.LiquidKg, 1e-6);
        await live.Ask(Iron(3));
        await superseded;

        Assert.True(live.IsCurrent);
        Assert.False(live.IsWorking);
        Assert.Equal(3, live.Last!.Plan.LiquidKg, 1e-6);
    }

    [Fact]
    public async Task Question_Withdrawn_LeavesTheLastPlanAsOld()
    {
        using var live = new LivePlan(TimeProvider.System);
        await live.Ask(Iron(1));
        var given = live.Ask(Iron(2));
        live.Withdraw();
        await given;

        Assert.False(live.IsCurrent);
        Assert.False(live.IsWorking);
        Assert.Equal(1, live.Last!.Plan.LiquidKg, 1e-6);
    }

    private static ChargeProblem Iron(double kg) => new()
    {
        MeltKg = kg,
        Materials = [new ChargeMaterial { Code = "iron", PricePerTonne = 1, Composition = new MaterialComposition { Analysis = Analysis.Empty } }],
        Limits = [],
    };
}

using Bunit;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Workers;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Yard;
using MeltShop.Web.Pages.Correction;
using MeltShop.Web.Tests.Pages.Charge;
using MeltShop.Web.Tests.Pages.Heats;

namespace MeltShop.Web.Tests.Pages.Correction;

/// <summary>A bath for which there are only blocks of carbon of 500 kg, and no worker that would look for whole ones: nothing is proven, and nothing is claimed.</summary>
[Collection(nameof(Alone))]
public sealed class CorrectionNotFoundTests : HeatTest
{
    [Fact]
    public async Task Search_WithoutACorrectionOrAProof_SaysSoAndIsNotKeptAsImpossible()
    {
        var sample = await LowBath();
        SignIn(Role.Melter);
        var page = Render<CorrectionPlanning>(parameters => parameters.Add(p => p.HeatId, HeatId));
        page.WaitForElement("[data-field=temperatureC] input", Patience).Change("1450");

        var news = page.WaitForElement("[data-testid=not-found]", Patience);
        Assert.Contains("the process that looks for whole pieces was lost", news.TextContent, StringComparison.Ordinal);
        Assert.Contains("Test block", page.Find("[data-testid=uncut]").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll("[data-testid=again]"));
        Assert.Empty(page.FindAll("[data-testid=out-of-reach]"));
        Assert.True(page.Find("[data-testid=accept]").HasAttribute("disabled"));

        var outcome = await The<AcceptCorrection>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, sample, new(1450), new(0, new Dictionary<string, double>())), Cancellation);
        Assert.Equal("correction.notFound", Assert.Single(outcome.Findings).Code);
    }

    [Fact]
    public void Way_ThatWasNotDecided_IsNotSaidToBeNone()
    {
        var page = Render<OutOfReach>(parameters => parameters
            .Add(p => p.Plan, new ChargePlan { Status = PlanStatus.Infeasible, MayConflictsBeFewer = true }).Add(p => p.Ways, new([], [WayIn.TapOff])).Add(p => p.NameOf, code => code));

        Assert.Equal("With tapping off: the search came to no end, so it is not known.", page.Find("[data-way=TapOff]").TextContent);
        Assert.Contains("whether fewer of these clash", page.Find("[data-testid=out-of-reach]").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[data-testid=no-way]"));
    }

    [Fact]
    public void Grade_ThatWasNotDecided_IsNotSaidToBeOutOfReach()
    {
        var page = Render<OtherGrades>(parameters => parameters.Add(p => p.Found, new([], ["EN-GJL-250"])).Add(p => p.Today, new(2026, 7, 1)).Add(p => p.Currency, "EUR"));

        Assert.Equal("The search came to no end for EN-GJL-250: whether this bath reaches it is not known.", page.Find("[data-testid=not-decided]").TextContent);
    }

    protected override void Dispose(bool disposing)
    {
        PieceWorkers.Use(null);
        base.Dispose(disposing);
    }

    private async Task<long> LowBath()
    {
        await WeighIn("steel", 1500);
        var sample = await Sample([3.40, 1.50, 0.30]);
        var block = (await The<AddMaterial>().Run(Founder, new(
            Guid.NewGuid(), Now, "block", "Test block", MaterialKind.Carburiser, MaterialUses.BathAddition, 600, 100, [new("C", 98, null, 90)], "Test figures", "memory", PieceKg: 500))).Value;
        await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now, block, StockKind.Counted, 5000));
        foreach (var code in new[] { "pig", "carbon" }) await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now.AddMinutes(1), MaterialIds[code], StockKind.Counted, 0), Cancellation);
        PieceWorkers.Use(new("/bin/sh", "-c", "read line; exit 1"));
        return sample;
    }
}

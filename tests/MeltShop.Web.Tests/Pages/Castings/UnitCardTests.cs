using Bunit;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Castings;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Tests.Pages.Castings;

/// <summary>The test unit of the demo's third ladle, which is released with a certificate.</summary>
public sealed class UnitCardTests : DemoShopTest
{
    [Fact]
    public async Task Unit_OfAReleasedLadle_IsHeldApartWithAReason()
    {
        SignIn(Role.Inspector);
        await using var db = await The<IDbContextFactory<Records.RecordsContext>>().CreateDbContextAsync(Cancellation);
        var id = await db.TreatedLadles.Where(l => l.Ordinal == 3).Select(l => l.Id).SingleAsync(Cancellation);
        var page = Render<CastingsDetail>(parameters => parameters.Add(p => p.Id, id));
        await page.InvokeAsync(() => page.WaitForElement("[data-testid=unit-open]", Patience).Click());
        HasKeyboard(page);
        page.WaitForElement("[data-testid=unit-form]", Patience);

        await page.InvokeAsync(() => page.Find("[data-testid=unit-form]").Submit());
        Assert.NotNull(page.WaitForElement("[data-testid=unit-form] [data-field=reason] .field-error[data-code='text.missing']", Patience));
        await page.InvokeAsync(() => page.Find("[data-testid=unit-form] [data-field=reason] input").Change("a crack was seen"));
        await page.InvokeAsync(() => page.Find("[data-testid=unit-form]").Submit());

        Assert.NotNull(page.WaitForElement("[data-testid=unit][data-apart=Hold]", Patience));
        Assert.Equal("Released", page.Find("[data-testid=castings-state]").TextContent);
        Assert.Equal(TreatedLadleState.Released, await db.TreatedLadles.Where(l => l.Id == id).Select(l => l.State).SingleAsync(Cancellation));
    }

    [Fact]
    public async Task Unit_OpenedBeforeALaterSample_IsDecidedOnNoSampleThatNobodySaw()
    {
        SignIn(Role.Inspector);
        await using var db = await The<IDbContextFactory<Records.RecordsContext>>().CreateDbContextAsync(Cancellation);
        var id = await db.TreatedLadles.Where(l => l.Ordinal == 3).Select(l => l.Id).SingleAsync(Cancellation);
        var page = Render<CastingsDetail>(parameters => parameters.Add(p => p.Id, id));
        var heatId = await db.TreatedLadles.Where(l => l.Id == id).Select(l => l.HeatId).SingleAsync(Cancellation);
        await page.InvokeAsync(() => page.WaitForElement("[data-testid=unit-open]", Patience).Click());
        page.WaitForElement("[data-testid=unit-form]", Patience);
        Assert.True((await The<RecordSample>().Run(Founder, new(Guid.NewGuid(), Now, heatId, id, SampleKind.LastMetal, [[new("Mg", 0.045, false, "0.045")]]), Cancellation)).Succeeded);
        await page.InvokeAsync(() => page.Find("[data-testid=unit-form] [data-field=verdict] select").Change(nameof(CastingVerdict.Scrap)));
        await page.InvokeAsync(() => page.Find("[data-testid=unit-form] [data-field=reason] input").Change("checked"));
        await page.InvokeAsync(() => page.Find("[data-testid=unit-form]").Submit());
        Assert.NotNull(page.WaitForElement("[data-testid=unit-form] [data-testid=findings]", Patience));
        Assert.Equal("checked", page.Find("[data-testid=unit-form] [data-field=reason] input").GetAttribute("value"));
        Assert.False(await db.CastingDecisions.AnyAsync(decision => decision.TreatedLadleId == id && decision.Verdict == CastingVerdict.Scrap, Cancellation));
    }
}

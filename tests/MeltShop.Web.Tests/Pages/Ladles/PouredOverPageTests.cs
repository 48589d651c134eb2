using Bunit;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>A ladle poured into a pouring furnace, as the pages of both show it.</summary>
public sealed class PouredOverPageTests : LadleTest
{
    [Fact]
    public async Task PouringFurnace_Filled_HasItsOwnPageWithWhatCameAndTheClock()
    {
        SignIn(Role.Melter);
        var vessel = await Vessel(2000);
        Assert.DoesNotContain((await Preparation()).Ladles, l => l.Id == vessel);
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        Assert.Contains((await Treated(id)).Vessels, v => v.Id == vessel);

        Assert.True((await The<RecordRest>().Run(Founder, new(Guid.NewGuid(), Now, id, RestWay.IntoEmpty, vessel, 700, null), Cancellation)).Succeeded);

        var page = Open(await Filling(vessel));
        var came = page.Find($"[data-came='{id}']");
        Assert.Contains("700\u00a0kg", came.TextContent, StringComparison.Ordinal);
        Assert.Equal("700\u00a0kg", page.Find("[data-testid=poured-in-kg]").TextContent);
        Assert.NotNull(page.Find("[data-testid=stop-at][data-first]"));
        Assert.Empty(page.FindAll("[data-testid=undo-reaction]"));
    }

    [Fact]
    public async Task PouringFurnace_ASourceCameBackLow_SaysWhichCastingsAreHeldForIt()
    {
        SignIn(Role.Melter);
        var (id, vessel) = (await Pouring(), await Vessel(2000));
        await Over(id, RestWay.IntoEmpty, vessel, 700);
        var filling = await Filling(vessel);
        Assert.True((await The<RecordMould>().Run(Founder, new(Guid.NewGuid(), Now.AddSeconds(30), filling, "1", 90, 12), Cancellation)).Succeeded);
        Assert.Empty(Open(filling).FindAll("[data-testid=low-source]"));

        await LastMetal(id, 0.021);

        var page = Open(filling);
        Assert.Contains("0.021", page.Find($"[data-low-source='{id}'] h2").TextContent, StringComparison.Ordinal);
        Assert.Contains("Held, poured already: 1", page.Find("[data-testid=low-source-held]").TextContent, StringComparison.Ordinal);
        Assert.Contains("iron of ladle 1 of heat", page.Find("[data-mould='1'] [data-testid=held-mould]").TextContent, StringComparison.Ordinal);
        Assert.Contains("came back low", page.Find($"[data-came='{id}'] .tag-wrong").TextContent, StringComparison.Ordinal);
        Assert.Matches("as a band 0.0[0-9]+ to 0.0[0-9]+\u00a0%", page.Find("[data-testid=came-band]").TextContent);
    }

    [Fact]
    public async Task PouringFurnace_OverItsFillLimit_IsWarnedOfInTheFormAndOnItsPage()
    {
        SignIn(Role.Melter);
        var (id, vessel) = (await Pouring(), await Vessel(600));
        var page = Open(id);
        page.Find("[data-testid=rest-form] [data-field=way] select").Change(nameof(RestWay.IntoEmpty));
        page.Find("[data-testid=rest-form] [data-field=vesselId] select").Change($"{vessel}");
        page.Find("[data-testid=rest-form] [data-field=kg] input").Change("600");
        Assert.Empty(page.FindAll("[data-testid=rest-overfill]"));
        page.Find("[data-testid=rest-form] [data-field=kg] input").Change("700");
        Assert.Contains("100\u00a0kg", page.Find("[data-testid=rest-overfill]").TextContent, StringComparison.Ordinal);

        await Over(id, RestWay.IntoEmpty, vessel, 700);

        var overfill = Open(await Filling(vessel)).Find("[data-testid=overfill]");
        Assert.Contains("100\u00a0kg", overfill.TextContent, StringComparison.Ordinal);
        Assert.Single(overfill.QuerySelectorAll(".caution"));
        // What holds iron is topped up: it is no longer among the empty ones.
        var rest = Open(id);
        rest.Find("[data-testid=rest-form] [data-field=way] select").Change(nameof(RestWay.IntoLadle));
        Assert.Contains("holds 700\u00a0kg of 600\u00a0kg", rest.Find("[data-testid=rest-form] [data-field=intoLadleId]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain((await Treated(id)).Vessels, v => v.Id == vessel);
    }

    private async Task<long> Pouring()
    {
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        return id;
    }

    private async Task<long> Vessel(double fillLimitKg) => (await The<AddLadle>().Run(Founder, new(
        Guid.NewGuid(), Now, "pf-1", "Pouring furnace 1", "pouringFurnace", fillLimitKg, 0, 0, null, 0.0002, 0.5, "invented for a test"), Cancellation)).Value;

    private async Task Over(long id, RestWay way, long into, double kg) =>
        Assert.True((await The<RecordRest>().Run(Founder, new(Guid.NewGuid(), Now, id, way, into, kg, null), Cancellation)).Succeeded);

    private async Task<long> Filling(long vessel)
    {
        await using var db = await The<IDbContextFactory<Records.RecordsContext>>().CreateDbContextAsync(Cancellation);
        return await db.TreatedLadles.Where(l => l.LadleId == vessel).Select(l => l.Id).SingleAsync(Cancellation);
    }

    private IRenderedComponent<LadleDetail> Open(long id)
    {
        var page = Render<LadleDetail>(parameters => parameters.Add(p => p.Id, id));
        page.WaitForState(() => page.FindAll("[data-testid=rest-form]").Count > 0, Patience);
        return page;
    }
}

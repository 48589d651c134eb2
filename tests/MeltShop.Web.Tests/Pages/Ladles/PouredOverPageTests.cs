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
        var vessel = (await The<AddLadle>().Run(Founder, new(
            Guid.NewGuid(), Now, "pf-1", "Pouring furnace 1", "pouringFurnace", 2000, 0, 0, null, 0.0002, 0.5, "invented for a test"), Cancellation)).Value;
        Assert.DoesNotContain((await Preparation()).Ladles, l => l.Id == vessel);
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        Assert.Contains((await Treated(id)).Vessels, v => v.Id == vessel);

        Assert.True((await The<RecordRest>().Run(Founder, new(Guid.NewGuid(), Now, id, RestWay.IntoEmpty, vessel, 700, null), Cancellation)).Succeeded);

        await using var db = await The<IDbContextFactory<Records.RecordsContext>>().CreateDbContextAsync(Cancellation);
        var filling = await db.TreatedLadles.Where(l => l.LadleId == vessel).Select(l => l.Id).SingleAsync(Cancellation);
        var page = Render<LadleDetail>(parameters => parameters.Add(p => p.Id, filling));
        var came = page.WaitForElement($"[data-came='{id}']", Patience);
        Assert.Contains("700 kg", came.TextContent, StringComparison.Ordinal);
        Assert.Equal("700 kg", page.Find("[data-testid=poured-in-kg]").TextContent);
        Assert.NotNull(page.Find("[data-testid=stop-at][data-first]"));
        Assert.Empty(page.FindAll("[data-testid=undo-reaction]"));
    }
}

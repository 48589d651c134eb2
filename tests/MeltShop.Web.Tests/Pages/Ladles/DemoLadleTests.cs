using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>The demo's last ladle: empty, its last mould late, its last metal under the floor.</summary>
public sealed class DemoLadleTests : DemoShopTest
{
    [Fact]
    public async Task LowSample_OfAnEmptyLadle_NamesTheMouldsAndOffersNothingToDoWithNoIron()
    {
        SignIn(Role.Melter);
        await using var db = await The<IDbContextFactory<Records.RecordsContext>>().CreateDbContextAsync(Cancellation);
        var id = await db.TreatedLadles.Where(l => l.Ordinal == 4).Select(l => l.Id).SingleAsync(Cancellation);

        var page = Render<LadleDetail>(parameters => parameters.Add(p => p.Id, id));

        Assert.Contains("4-1, 4-2, 4-3", page.WaitForElement("[data-testid=low-held]", Patience).TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[data-choice]"));
        Assert.Equal("4-4", page.Find("[data-testid=mould-form] [data-field=label] input").GetAttribute("value"));
        Assert.NotNull(page.Find("[data-mould='4-3'] [data-testid=held-mould]"));
        foreach (var late in new[] { "rest-form", "inoculation-form", "ladle-temperature-form" })
        {
            Assert.NotNull(page.Find($"[data-testid={late}]").Closest("details"));
        }
    }
}

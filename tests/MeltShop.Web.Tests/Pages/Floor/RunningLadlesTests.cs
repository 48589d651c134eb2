using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Floor;
using MeltShop.Web.Tests.Pages.Ladles;

namespace MeltShop.Web.Tests.Pages.Floor;

/// <summary>Where the floor shows ladles: first while a clock runs, below the furnaces while none does.</summary>
public sealed class RunningLadlesTests : LadleTest
{
    [Fact]
    public async Task Ladles_WhileAClockRuns_StandFirst()
    {
        SignIn(Role.Melter);
        var id = await Prepared();
        Assert.True(await FurnacesFirst());

        await Tap(id, 790);

        Assert.False(await FurnacesFirst());
    }

    private Task<bool> FurnacesFirst()
    {
        var page = Render<ShopFloor>();
        page.WaitForElement("[data-testid=open-ladle]", Patience);
        return Task.FromResult(page.Markup.IndexOf("Furnace 1", StringComparison.Ordinal) < page.Markup.IndexOf("data-testid=\"open-ladle\"", StringComparison.Ordinal));
    }
}

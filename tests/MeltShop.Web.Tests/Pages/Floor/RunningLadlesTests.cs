using Bunit;
using MeltShop.Operations.Ladles;
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
        Assert.Contains("in Ladle 1, 1000 kg; EN-GJS-500-7", Render<ShopFloor>().Find("[data-testid=open-ladle]").TextContent, StringComparison.Ordinal); // its name, not its code
    }

    [Theory]
    [InlineData(Role.Melter, true)]
    [InlineData(Role.Inspector, false)]
    public async Task Ladle_OverItsTime_WaitsForThoseWhoEmptyItUntilItIsEmpty(string role, bool waits)
    {
        SignIn(role);
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        Assert.Equal(0, Rests());

        Clock.At = Now.AddHours(1);
        Assert.Equal(waits ? 1 : 0, Rests());

        Assert.True((await The<RecordRest>().Run(Founder, new(Guid.NewGuid(), Now, id, RestWay.Pigged, null, 780, null), Cancellation)).Succeeded); // 10 kg by the scales: as good as empty
        Assert.Equal(0, Rests());

        int Rests()
        {
            var page = Render<ShopFloor>();
            page.WaitForElement("[data-testid=open-ladle]", Patience);
            return page.FindAll($"[data-waiting=Rest][href='/ladles/{id}']").Count;
        }
    }

    private Task<bool> FurnacesFirst()
    {
        var page = Render<ShopFloor>();
        page.WaitForElement("[data-testid=open-ladle]", Patience);
        return Task.FromResult(page.Markup.IndexOf("Furnace 1", StringComparison.Ordinal) < page.Markup.IndexOf("data-testid=\"open-ladle\"", StringComparison.Ordinal));
    }
}

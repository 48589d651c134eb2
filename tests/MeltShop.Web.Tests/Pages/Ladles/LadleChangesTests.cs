using System.Reflection;
using Bunit;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Pages.Castings;
using MeltShop.Web.Pages.Ladles;
using Microsoft.AspNetCore.Components;
using LadleContent = MeltShop.Web.Pages.Ladles.LadleContent;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>On a busy shift most changes are of other ladles: a page of one reads again for its own.</summary>
public sealed class LadleChangesTests : LadleTest
{
    [Fact]
    public async Task Ladle_ChangesOfOthersAndThenItsOwn_ReadsOnce() => await ReadsOnce<LadleDetail, LadleContent>(await Prepared());

    [Fact]
    public async Task Castings_ChangesOfOthersAndThenOfTheirOwn_ReadOnce() => await ReadsOnce<CastingsDetail, CastingsContent>(await Prepared());

    [Fact]
    public async Task Ladle_WithARest_HearsWhereTheOthersStand()
    {
        var id = await Prepared();
        Assert.False(LadleChanges.HasRest(await Treated(id)));
        await Tap(id, 790);

        Assert.True(LadleChanges.HasRest(await Treated(id)));
        Assert.True(Hears(Open<LadleDetail>(id), new(ChangeKind.TreatedLadle, id + 1)));
        Assert.False(Hears(Open<CastingsDetail>(id), new(ChangeKind.TreatedLadle, id + 1))); // offers no way for it
    }

    [Fact]
    public async Task Change_OfWhatTheLadleIsMadeOf_ConcernsIt()
    {
        var view = await Treated(await Prepared());

        Assert.True(Concerns(view, ChangeKind.Furnace, view.Heat.FurnaceId));
        Assert.True(Concerns(view, ChangeKind.Material, view.Inoculants[0].Id));
        Assert.True(Concerns(view, ChangeKind.Sample, 4711)); // whose it is, only its reading tells
        Assert.True(Concerns(view, ChangeKind.Instrument, 4711));
        Assert.False(Concerns(view, ChangeKind.Furnace, view.Heat.FurnaceId + 1));
        Assert.False(Concerns(view, ChangeKind.Material, 4711));
        Assert.True(LadleChanges.Concern(view, new(ChangeKind.Material, 4711, Guid.NewGuid()))); // has become another one: it may be one to offer now
        Assert.False(Concerns(view, ChangeKind.Order, 1));
    }

    private static bool Concerns(LadleView view, string kind, long id) => LadleChanges.Concern(view, new(kind, id));

    private async Task ReadsOnce<TPage, TView>(long id)
        where TPage : PageBase<TView>
        where TView : class
    {
        var page = Open<TPage>(id);
        var count = typeof(PageBase<TView>).GetField("reading", BindingFlags.Instance | BindingFlags.NonPublic)!;
        int Readings() => (int)count.GetValue(page.Instance)!;
        var before = Readings();
        await Say(new(ChangeKind.TreatedLadle, id + 1), new(ChangeKind.Heat, HeatId + 1), new(ChangeKind.Material, 4711));
        await page.InvokeAsync(() => Assert.Equal(before, Readings())); // whatever it would read for them has begun
        await Say(new ChangeNotice(ChangeKind.TreatedLadle, id));
        page.WaitForAssertion(() => Assert.NotEqual(before, Readings()));

        Assert.Equal(before + 1, Readings());
        Assert.True(Hears(page, new(ChangeKind.Heat, HeatId)));
        Assert.True(Hears(page, new(ChangeKind.Grade, 4711)));
    }

    /// <summary>In a bundle of its own: whoever listens has got it when this goes on.</summary>
    private async Task Say(params ChangeNotice[] notices)
    {
        var notice = The<ChangeNotices>();
        await using var listener = notice.Listen(Cancellation).GetAsyncEnumerator(Cancellation);
        notice.Publish(notices);
        Assert.True(await listener.MoveNextAsync());
    }

    private static bool Hears<TPage>(IRenderedComponent<TPage> page, ChangeNotice change)
        where TPage : IComponent =>
        (bool)typeof(TPage).GetMethod("Concerns", BindingFlags.Instance | BindingFlags.NonPublic)!.Invoke(page.Instance, [change])!;

    private IRenderedComponent<TPage> Open<TPage>(long id)
        where TPage : IComponent
    {
        SignIn(Role.Melter, Role.Inspector);
        var page = Render<TPage>(builder => builder.TryAdd("Id", id));
        page.WaitForElement("[data-state=ready]", Patience);
        return page;
    }
}

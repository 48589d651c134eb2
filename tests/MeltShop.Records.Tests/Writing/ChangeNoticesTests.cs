using MeltShop.Records.Writing;

namespace MeltShop.Records.Tests.Writing;

public sealed class ChangeNoticesTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Notices_OfOneThingInABurst_ArriveAsOneWithTheLastVersion()
    {
        var notices = new ChangeNotices(TimeProvider.System);
        using var listening = CancellationTokenSource.CreateLinkedTokenSource(Ct);
        var changes = notices.Listen(listening.Token);
        var last = Guid.NewGuid();

        for (var n = 0; n < 10; n++) notices.Publish(new ChangeNotice(ChangeKind.Heat, 7, Guid.NewGuid()), new ChangeNotice(ChangeKind.Material, 7));
        notices.Publish(new ChangeNotice(ChangeKind.Heat, 7, last));

        await foreach (var bundle in changes)
        {
            Assert.Equal([new(ChangeKind.Heat, 7, last), new(ChangeKind.Material, 7)], bundle.OrderBy(c => c.Kind));
            break;
        }
    }

    [Fact]
    public async Task Notices_ToSeveralListeners_ReachEachOfThemUntilItStops()
    {
        var notices = new ChangeNotices(TimeProvider.System);
        using var leaving = CancellationTokenSource.CreateLinkedTokenSource(Ct);
        await using var leaver = notices.Listen(leaving.Token).GetAsyncEnumerator(Ct);
        await using var stayer = notices.Listen(Ct).GetAsyncEnumerator(Ct);

        notices.Publish(new ChangeNotice(ChangeKind.Heat, 1));
        Assert.True(await leaver.MoveNextAsync() && await stayer.MoveNextAsync());
        Assert.Equal((1, 1), (Assert.Single(leaver.Current).Id, Assert.Single(stayer.Current).Id));
        await leaving.CancelAsync();
        notices.Publish(new ChangeNotice(ChangeKind.Heat, 2));

        Assert.False(await leaver.MoveNextAsync());
        Assert.True(await stayer.MoveNextAsync());
        Assert.Equal(2, Assert.Single(stayer.Current).Id);
    }

    [Fact]
    public async Task Notices_WithoutAListener_GoNowhereAndBlockNobody()
    {
        var notices = new ChangeNotices(TimeProvider.System);
        notices.Publish(new ChangeNotice(ChangeKind.Heat, 1));
        using var listening = CancellationTokenSource.CreateLinkedTokenSource(Ct);
        var late = Collect(notices.Listen(listening.Token));
        await listening.CancelAsync();

        Assert.Empty(await late);
    }

    private static Task<List<ChangeNotice>> Collect(IAsyncEnumerable<IReadOnlyList<ChangeNotice>> changes) => Task.Run(async () =>
    {
        var all = new List<ChangeNotice>();
        await foreach (var bundle in changes) all.AddRange(bundle);
        return all;
    });
}

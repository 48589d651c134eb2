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
        notices.Publish(new ChangeNotice(ChangeKind.Heat, 7)); // that says none leaves it

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
    public async Task Notices_WhileTheyGather_AreOneBundle()
    {
        var clock = new HeldClock();
        var notices = new ChangeNotices(clock);
        await using var listener = notices.Listen(Ct).GetAsyncEnumerator(Ct);
        var next = listener.MoveNextAsync();

        notices.Publish(new ChangeNotice(ChangeKind.Heat, 1));
        Assert.Equal(ChangeNotices.Gathering, await clock.Asked.WaitAsync(TimeSpan.FromMinutes(5), Ct));
        notices.Publish(new ChangeNotice(ChangeKind.Heat, 2));
        clock.GoOn();

        Assert.True(await next);
        Assert.Equal([1, 2], listener.Current.Select(c => c.Id));
    }

    [Fact]
    public async Task Notices_ToAListenerThatLeavesWhileTheyGather_AreNotGiven()
    {
        var notices = new ChangeNotices(TimeProvider.System);
        using var leaving = CancellationTokenSource.CreateLinkedTokenSource(Ct);
        await using var leaver = notices.Listen(leaving.Token).GetAsyncEnumerator(Ct);
        var next = leaver.MoveNextAsync();

        notices.Publish(new ChangeNotice(ChangeKind.Heat, 1));
        await leaving.CancelAsync();

        Assert.False(await next);
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

    /// <summary>A wait on this clock ends when the test says so.</summary>
    private sealed class HeldClock : TimeProvider
    {
        private readonly TaskCompletionSource<TimeSpan> asked = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private Action? end;

        public Task<TimeSpan> Asked => asked.Task;

        public void GoOn() => end!();

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            end = () => callback(state);
            asked.TrySetResult(dueTime);
            return System.CreateTimer(_ => { }, null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        }
    }
}

using System.Collections.Concurrent;
using MeltShop.Records.Reading;

namespace MeltShop.Records.Tests.Reading;

public sealed class JoinedReadsTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Reads_AskedForByFiftyAtOnce_AreTwoAndNobodyHearsWhatWasBefore()
    {
        var (state, reads) = (0, 0);
        var gate = new TaskCompletionSource();
        var joined = new JoinedReads<int, int>(async _ =>
        {
            var seen = Volatile.Read(ref state);
            if (Interlocked.Increment(ref reads) == 1) await gate.Task;
            return seen;
        });
        var first = joined.Of(7, Soon);
        while (Volatile.Read(ref reads) == 0) await Task.Yield();
        state = 1; // a change, after the first reading looked
        var others = Enumerable.Range(0, 50).Select(_ => joined.Of(7, Soon)).ToList();
        var elsewhere = await joined.Of(8, Soon);
        gate.SetResult();

        Assert.Equal(0, await first);
        Assert.All(await Task.WhenAll(others), seen => Assert.Equal(1, seen));
        Assert.Equal((1, 3), (elsewhere, reads)); // the first, one for the fifty, and the other key's
    }

    [Fact]
    public async Task Reads_OneThatFailsOrIsLeft_KeepsNobodyElseFromTheNext()
    {
        var fails = new ConcurrentQueue<bool>([true, false, false]);
        var joined = new JoinedReads<int, string>(async _ =>
        {
            await Task.Yield();
            return fails.TryDequeue(out var fail) && fail ? throw new InvalidOperationException("broken") : "read";
        });

        await Assert.ThrowsAsync<InvalidOperationException>(() => joined.Of(1, Soon));
        using var left = new CancellationTokenSource();
        var leaving = joined.Of(1, left.Token);
        var staying = joined.Of(1, Soon);
        await left.CancelAsync();
        Assert.Equal("read", await staying);
        await Task.WhenAny(leaving);
        Assert.Equal("read", await joined.Of(1, Soon));
    }
}

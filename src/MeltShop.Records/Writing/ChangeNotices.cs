using System.Runtime.CompilerServices;
using System.Threading.Channels;

namespace MeltShop.Records.Writing;

/// <summary>
/// Tells whoever listens in this process what was committed. A listener gets each changed thing once in 50 ms, however often it
/// changed: it reads the current state anyway.
/// </summary>
public sealed class ChangeNotices(TimeProvider clock)
{
    /// <summary>Changes within this time arrive as one.</summary>
    public static TimeSpan Gathering { get; } = TimeSpan.FromMilliseconds(50);

    private readonly Lock gate = new();
    private readonly List<Channel<ChangeNotice>> listeners = [];

    /// <summary>After a commit, never before.</summary>
    public void Publish(params IReadOnlyList<ChangeNotice> notices)
    {
        ArgumentNullException.ThrowIfNull(notices);
        lock (gate)
        {
            foreach (var listener in listeners)
            {
                foreach (var notice in notices) listener.Writer.TryWrite(notice);
            }
        }
    }

    /// <summary>
    /// The changes from now on, in bundles, each thing once a bundle with its last version, until <paramref name="ct"/> is cancelled
    /// or the reading stops. Listening starts with the call, not with the first read.
    /// </summary>
    public IAsyncEnumerable<IReadOnlyList<ChangeNotice>> Listen(CancellationToken ct)
    {
        var channel = Channel.CreateUnbounded<ChangeNotice>(new() { SingleReader = true });
        lock (gate) listeners.Add(channel);
        return Bundles(channel, ct.Register(() => Stop(channel)), ct);
    }

    private void Stop(Channel<ChangeNotice> channel)
    {
        lock (gate) listeners.Remove(channel);
        channel.Writer.TryComplete();
    }

    private async IAsyncEnumerable<IReadOnlyList<ChangeNotice>> Bundles(
        Channel<ChangeNotice> channel, CancellationTokenRegistration stopping, [EnumeratorCancellation] CancellationToken ct)
    {
        await using var _ = stopping;
        try
        {
            while (await channel.Reader.WaitToReadAsync(CancellationToken.None))
            {
                await Task.Delay(Gathering, clock, CancellationToken.None);
                if (ct.IsCancellationRequested) yield break; // whoever listened has gone
                var bundle = new Dictionary<(string Kind, long Id), ChangeNotice>();
                while (channel.Reader.TryRead(out var notice)) bundle[(notice.Kind, notice.Id)] = notice;
                if (bundle.Count > 0) yield return [.. bundle.Values];
            }
        }
        finally
        {
            Stop(channel);
        }
    }
}

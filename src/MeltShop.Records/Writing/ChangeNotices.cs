using System.Runtime.CompilerServices;
using System.Threading.Channels;

namespace MeltShop.Records.Writing;

/// <summary>
/// Tells whoever listens what was committed: in this process here, in others through the database where it can
/// (<see cref="Databases.OtherInstances"/>). A listener gets each changed thing once in 50 ms, however often it changed: it reads the
/// current state anyway.
/// </summary>
public sealed class ChangeNotices(TimeProvider clock)
{
    /// <summary>Changes within this time arrive as one.</summary>
    public static TimeSpan Gathering { get; } = TimeSpan.FromMilliseconds(50);

    private readonly Lock gate = new();
    private readonly List<Channel<ChangeNotice>> listeners = [];

    /// <summary>Who says it, so that this process does not hear its own changes a second time.</summary>
    internal Guid Source { get; } = Guid.NewGuid();

    /// <summary>Commits the context's transaction and says what changed, or does neither.</summary>
    public async Task Commit(RecordsContext db, IReadOnlyList<ChangeNotice> changed, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(db);
        ArgumentNullException.ThrowIfNull(changed);
        if (changed.Count > 0) await db.Announce(Source, changed, ct);
        await db.Database.CurrentTransaction!.CommitAsync(CancellationToken.None); // from here on it is for the database alone to fail
        Publish(changed);
    }

    /// <summary>To this process alone; after a commit, never before.</summary>
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
                while (channel.Reader.TryRead(out var notice))
                {
                    var thing = (notice.Kind, notice.Id);
                    if (notice.Version is not null || !bundle.ContainsKey(thing)) bundle[thing] = notice;
                }

                if (bundle.Count > 0) yield return [.. bundle.Values];
            }
        }
        finally
        {
            Stop(channel);
        }
    }
}

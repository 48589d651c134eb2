using System.Collections.Concurrent;
using MeltShop.Records.Databases;
using MeltShop.Records.Writing;
using Microsoft.Extensions.Logging.Abstractions;
using Npgsql;

namespace MeltShop.Records.Tests.Databases;

/// <summary>Two instances of the program on one database hear of each other's changes. (PostgreSQL only: SQLite has one.)</summary>
public sealed class OtherInstancesTests : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    private readonly PostgresDatabase database = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => database.InitializeAsync();

    public ValueTask DisposeAsync() => database.DisposeAsync();

    [Fact]
    public async Task Write_InOneInstance_IsHeardInTheOtherOnceItIsCommittedAndOnceInItsOwn()
    {
        var foundry = await Foundry.Found(database);
        await using var here = await Instance.Start(database, "here");
        await using var there = await Instance.Start(database, "there");
        var refused = new ChangeNotice(ChangeKind.Heat, 1, Guid.NewGuid());
        ChangeNotice[] changed = [.. Enumerable.Range(2, 120).Select(id => new ChangeNotice(ChangeKind.Heat, id, Guid.NewGuid()))];

        await Assert.ThrowsAsync<InvalidOperationException>(() => here.Recorder.Record<int>(foundry.Entry("Fails"), async (db, _, ct) =>
        {
            await db.Announce(here.Notices.Source, [refused], ct);
            throw new InvalidOperationException("after it was sent and before it was committed");
        }, Ct));
        await here.Recorder.Record(foundry.Entry("Changes"), (_, _, _) => Task.FromResult(Written<int>.Of(1, changed)), Ct);
        var last = new ChangeNotice(ChangeKind.Site, 1);
        await there.Recorder.Record(foundry.Entry("Answers"), (_, _, _) => Task.FromResult(Written<int>.Of(1, last)), Ct);

        await there.Hears(changed);
        await here.Hears(last); // what it said before came back before this
        Assert.DoesNotContain(refused, there.Heard);
        Assert.Equal(changed.Length, here.Heard.Count(changed.Contains));
        Assert.Equal(changed.Length, there.Heard.Count(changed.Contains));
    }

    [Fact]
    public async Task Write_WhileTheListeningIsCut_IsCaughtUpAndLaterOnesAreHeard()
    {
        var foundry = await Foundry.Found(database);
        await using var here = await Instance.Start(database, "here");
        await using var there = await Instance.Start(database, "there");
        var (missed, heard) = (new ChangeNotice(ChangeKind.Heat, 1), new ChangeNotice(ChangeKind.Heat, 2));
        there.Heard.Clear();

        await there.Cut();
        await here.Recorder.Record(foundry.Entry("Missed"), (_, _, _) => Task.FromResult(Written<int>.Of(1, missed)), Ct);
        await there.Hears(ChangeNotice.Anything);
        await here.Recorder.Record(foundry.Entry("Heard"), (_, _, _) => Task.FromResult(Written<int>.Of(1, heard)), Ct);

        await there.Hears(heard);
        Assert.DoesNotContain(ChangeNotice.Anything, here.Heard.Skip(1)); // only the one that was cut catches up
    }

    [Fact]
    public async Task Text_OfAnotherVersionOfTheProgram_CountsAsAnyChange()
    {
        await using var there = await Instance.Start(database, "there");
        there.Heard.Clear();

        await there.Send("SELECT pg_notify('meltshop_changes', 'heat 7')");

        await there.Hears(ChangeNotice.Anything);
    }

    /// <summary>What of the program matters here: a recorder, its notices, and the listening under a name of its own.</summary>
    private sealed class Instance : IAsyncDisposable
    {
        private readonly CancellationTokenSource leaving = new();
        private readonly RecordsOptions options;
        private readonly OtherInstances others;
        private readonly string name;

        private Instance(Database database, string name)
        {
            this.name = name;
            options = database.Options with { ConnectionString = $"{database.Options.ConnectionString};Application Name={name}" };
            Recorder = new(database.Contexts, Notices, database.Clock);
            others = new(options, Notices, TimeProvider.System, NullLogger<OtherInstances>.Instance);
        }

        public ChangeNotices Notices { get; } = new(TimeProvider.System);
        public ConcurrentQueue<ChangeNotice> Heard { get; } = [];
        public Recorder Recorder { get; }

        /// <summary>Once it listens.</summary>
        public static async Task<Instance> Start(Database database, string name)
        {
            var instance = new Instance(database, name);
            _ = instance.Note(instance.Notices.Listen(instance.leaving.Token));
            await instance.others.StartAsync(Ct);
            await instance.Hears(ChangeNotice.Anything);
            return instance;
        }

        public async Task Hears(params ChangeNotice[] changes)
        {
            var until = TimeProvider.System.GetUtcNow() + Patience;
            while (!changes.All(Heard.Contains))
            {
                Assert.True(TimeProvider.System.GetUtcNow() < until, $"{name} heard {string.Join(", ", Heard)} and not {string.Join(", ", changes.Except(Heard))}.");
                await Task.Delay(20, Ct);
            }
        }

        /// <summary>Ends its connection, and no other, at the server.</summary>
        public Task Cut() => Send($"SELECT pg_terminate_backend(pid, 30000) FROM pg_stat_activity WHERE datname = current_database() AND application_name = '{name}'");

        public async Task Send(string statement)
        {
            await using var connection = new NpgsqlConnection(new NpgsqlConnectionStringBuilder(options.ConnectionString) { ApplicationName = "test", Pooling = false }.ConnectionString);
            await connection.OpenAsync(Ct);
#pragma warning disable CA2100 // from above
            await using var command = new NpgsqlCommand(statement, connection);
#pragma warning restore CA2100
            await command.ExecuteNonQueryAsync(Ct);
        }

        public async ValueTask DisposeAsync()
        {
            await others.StopAsync(CancellationToken.None);
            others.Dispose();
            await leaving.CancelAsync();
            leaving.Dispose();
        }

        private async Task Note(IAsyncEnumerable<IReadOnlyList<ChangeNotice>> bundles)
        {
            await foreach (var bundle in bundles)
            {
                foreach (var change in bundle) Heard.Enqueue(change);
            }
        }
    }
}

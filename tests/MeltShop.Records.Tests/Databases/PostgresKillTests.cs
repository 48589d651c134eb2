using System.Collections.Concurrent;
using System.Diagnostics;
using MeltShop.Records.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Databases;

/// <summary>What was acknowledged is there after the server was killed, at whatever moment. (PostgreSQL only: SQLite has no server.)</summary>
public sealed class PostgresKillTests
{
    private const int Seed = 1125;
    private static readonly TimeSpan UsableWithin = TimeSpan.FromSeconds(10);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>5, or as many as MELTSHOP_KILLS says.</summary>
    private static int Kills => Wanted ?? 5;

    private static int? Wanted => int.TryParse(Environment.GetEnvironmentVariable("MELTSHOP_KILLS"), out var count) ? count : null;

    [Fact]
    public async Task Shift_WithTheServerKilledAtRandomMoments_LosesNothingThatWasAcknowledged()
    {
        var random = new Random(Seed);
        await using var server = await OwnPostgres.Make();
        await RecordsDatabase.MigrateAsync(server.Options, Ct);
        var contexts = new ContextFactory(server.Options);
        var foundry = await Foundry.Found(new Standing(server.Options));
        var heat = await foundry.Heat();
        var acknowledged = new ConcurrentDictionary<Guid, int>();
        var slowest = TimeSpan.Zero;

        for (var kill = 1; kill <= Kills; kill++)
        {
            using var cut = CancellationTokenSource.CreateLinkedTokenSource(Ct);
            var writers = Enumerable.Range(0, 4).Select(_ => Task.Run(() => WeighUntil(contexts, foundry, heat.Id, acknowledged, cut.Token), Ct)).ToList();
            await Task.Delay(random.Next(100, 900), Ct);
            await server.Kill();
            await cut.CancelAsync();
            await Task.WhenAll(writers);

            var down = Stopwatch.GetTimestamp();
            await server.Start();
            await WeighOnce(contexts, foundry, heat.Id, acknowledged, Ct);
            slowest = Stopwatch.GetElapsedTime(down) is var took && took > slowest ? took : slowest;

            var trail = await new TrailCheck(contexts).Run(Ct);
            Assert.True(trail.Holds, $"seed {Seed}, kill {kill}: {string.Join("; ", trail.Faults)}");
            await using var db = contexts.CreateDbContext();
            var kept = await db.Weighings.Where(w => w.HeatId == heat.Id).Select(w => w.EntryKey).ToListAsync(Ct);
            Assert.True(acknowledged.Keys.All(kept.Contains), $"seed {Seed}, kill {kill}: an acknowledged entry is lost");
            Assert.Equal(kept.Count, kept.Distinct().Count());
            Assert.Equal(kept.Count, await db.StockFacts.CountAsync(s => s.HeatId == heat.Id, Ct)); // both halves of an entry, or none
        }

        TestContext.Current.TestOutputHelper!.WriteLine($"seed {Seed}: {Kills} kills, {acknowledged.Count} entries acknowledged, usable again within {slowest.TotalSeconds:F1} s");
        if (Wanted is not null) Assert.True(slowest <= UsableWithin, $"usable again after {slowest}"); // a busy machine of the short suite would make it lie
    }

    private static async Task WeighUntil(ContextFactory contexts, Foundry foundry, long heatId, ConcurrentDictionary<Guid, int> acknowledged, CancellationToken cut)
    {
        while (!cut.IsCancellationRequested)
        {
            try
            {
                await WeighOnce(contexts, foundry, heatId, acknowledged, CancellationToken.None);
            }
            catch (Exception e) when (e is System.Data.Common.DbException or DbUpdateException or InvalidOperationException or IOException)
            {
                return; // the server is gone: whether this one came through is not known, and it was not acknowledged
            }
        }
    }

    private static async Task WeighOnce(ContextFactory contexts, Foundry foundry, long heatId, ConcurrentDictionary<Guid, int> acknowledged, CancellationToken ct)
    {
        var entry = foundry.Entry("WeighIn");
        var recorded = await new Recorder(contexts, foundry.Database.Notices, foundry.Database.Clock).Record(entry, async (db, stamp, inner) =>
        {
            db.Weighings.Add(stamp.Weighing(heatId, foundry.Steel.Id, 1.5));
            await db.SaveChangesAsync(inner);
            db.StockFacts.Add(new()
            {
                EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
                MaterialId = foundry.Steel.Id, Kind = Yard.StockKind.Charged, Kg = -1.5, HeatId = heatId,
            });
            return Written<int>.Of(1);
        }, ct);
        if (recorded.Succeeded) acknowledged[entry.Key] = 1;
    }

    /// <summary>A database that is there already and is not dropped.</summary>
    private sealed class Standing : Database
    {
        public Standing(RecordsOptions options) => Stand(options);

        public override Task<Func<Database>> Seal() => throw new NotSupportedException();

        protected override Task<RecordsOptions> Create() => throw new NotSupportedException();

        protected override Task Drop() => Task.CompletedTask;
    }
}

using System.Collections.Concurrent;
using System.Diagnostics;
using MeltShop.Records.Heats;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Writing;

/// <summary>Sixteen clients start heats, weigh, correct, edit and read at once; afterwards everything adds up.</summary>
public abstract class ManyClientsTests(Database database)
{
    private const int Clients = 16;
    private const int Seed = 16;

    private readonly ConcurrentDictionary<Guid, double> weighed = new();
    private int edits;
    private int stale;
    private int corrected;
    private int lostRaces;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>What each client does, or as much as it gets done in as many seconds as MELTSHOP_SECONDS says: a slow machine takes longer and does no less.</summary>
    private const int Turns = 64;

    private static TimeSpan? Shift => int.TryParse(Environment.GetEnvironmentVariable("MELTSHOP_SECONDS"), out var seconds) ? TimeSpan.FromSeconds(seconds) : null;

    [Fact]
    public async Task Clients_SixteenAtOnce_LoseNothingAndOverwriteNothing()
    {
        var foundry = await Foundry.Found(database);
        await using (var db = database.Open())
            await db.Materials.Where(m => m.Id == foundry.Steel.Id).ExecuteUpdateAsync(m => m.SetProperty(x => x.StockKg, (double?)0), Ct);
        var started = Stopwatch.GetTimestamp();

        var heats = await Task.WhenAll(Enumerable.Range(0, Clients).Select(n => Task.Run(() => Work(foundry, new Random(Seed + n), started), Ct)));

        await using var after = database.Open();
        var numbers = await after.Heats.Where(h => h.SiteId == foundry.Site.Id).Select(h => h.Number).ToListAsync(Ct);
        var kept = await after.Weighings.Where(w => w.SupersedesId == null).ToDictionaryAsync(w => w.EntryKey, w => w.Kg, Ct);
        var steel = await after.Materials.SingleAsync(m => m.Id == foundry.Steel.Id, Ct);
        TestContext.Current.TestOutputHelper!.WriteLine(
            $"seed {Seed}: {heats.Sum()} heats, {weighed.Count} weighings, {corrected} corrections ({lostRaces} refused), {edits} edits ({stale} refused)");
        Assert.Equal(Enumerable.Range(1, heats.Sum()).Select(n => $"{foundry.Site.Code}-2026-{n:0000}"), numbers.Order(StringComparer.Ordinal));
        Assert.Equal(weighed.OrderBy(w => w.Key), kept.OrderBy(w => w.Key)); // each acknowledged one, once, and no other
        Assert.Equal(312.50m + edits, steel.PricePerTonne); // each accepted edit saw the one before it
        Assert.Equal(corrected, await after.Weighings.CountAsync(w => w.SupersedesId != null, Ct));
        Assert.Equal(await after.StockFacts.Where(s => s.MaterialId == foundry.Steel.Id).SumAsync(s => s.Kg, Ct), steel.StockKg!.Value, 1e-6);
        Assert.True(edits > 0 && corrected > 0 && heats.Sum() > Clients);
        Assert.Empty((await new TrailCheck(database.Contexts).Run(Ct)).Faults);
    }

    private async Task<int> Work(Foundry foundry, Random random, long started)
    {
        var (heat, heats) = (await foundry.Heat(), 1);
        for (var turn = 0; Shift is { } shift ? Stopwatch.GetElapsedTime(started) < shift : turn < Turns; turn++)
        {
            switch (random.Next(8))
            {
                case 0: heat = await foundry.Heat(); heats++; break;
                case 1: await Edit(foundry); break;
                case 2: await Correct(foundry, random); break;
                case 3: await new Records.Reading.History.HistoryPage(database.Contexts).Load(ct: Ct); break;
                default: await Weigh(foundry, heat, random.Next(1, 4000) / 8d); break;
            }
        }

        return heats;
    }

    private async Task Weigh(Foundry foundry, Heat heat, double kg)
    {
        var entry = foundry.Entry("WeighIn");
        var recorded = await database.Recorder.Record(entry, async (db, stamp, ct) =>
        {
            db.Weighings.Add(stamp.Weighing(heat.Id, foundry.Steel.Id, kg));
            db.StockFacts.Add(stamp.Stock(foundry.Steel.Id, -kg));
            await db.Materials.Where(m => m.Id == foundry.Steel.Id).ExecuteUpdateAsync(m => m.SetProperty(x => x.StockKg, x => x.StockKg - kg), ct);
            return Written<int>.Of(1);
        }, Ct);
        Assert.Empty(recorded.Findings);
        weighed[entry.Key] = kg;
    }

    /// <summary>One more on the price that was seen: where two saw the same, one is told so.</summary>
    private async Task Edit(Foundry foundry)
    {
        await using var reading = database.Open();
        var seen = await reading.Materials.AsNoTracking().SingleAsync(m => m.Id == foundry.Steel.Id, Ct);
        var recorded = await database.Recorder.Record(foundry.Entry("ChangePrice"), async (db, _, ct) =>
        {
            var steel = await db.Materials.SingleAsync(m => m.Id == foundry.Steel.Id, ct);
            db.Expect(steel, seen.Version);
            steel.PricePerTonne = seen.PricePerTonne + 1;
            return Written<int>.Of(1);
        }, Ct);
        if (recorded.Succeeded) Interlocked.Increment(ref edits);
        else Assert.Equal("version.stale", Assert.Single(recorded.Findings).Code);
        if (!recorded.Succeeded) Interlocked.Increment(ref stale);
    }

    /// <summary>A weighing is corrected once: who comes second is told so.</summary>
    private async Task Correct(Foundry foundry, Random random)
    {
        await using var reading = database.Open();
        var wrong = await reading.Weighings.AsNoTracking().Where(w => w.SupersedesId == null).OrderByDescending(w => w.Id).Skip(random.Next(3)).FirstOrDefaultAsync(Ct);
        if (wrong is null) return;
        var recorded = await database.Recorder.Record(foundry.Entry("CorrectWeight"), (db, stamp, _) =>
        {
            db.Weighings.Add(stamp.Weighing(wrong.HeatId, wrong.MaterialId, wrong.Kg + 1, wrong.Id));
            return Task.FromResult(Written<int>.Of(1));
        }, Ct);
        if (recorded.Succeeded) Interlocked.Increment(ref corrected);
        else Assert.Equal("unique.taken", Assert.Single(recorded.Findings).Code);
        if (!recorded.Succeeded) Interlocked.Increment(ref lostRaces);
    }
}

public sealed class ManyClientsTestsOnSqlite(SqliteDatabase database) : ManyClientsTests(database), IClassFixture<SqliteDatabase>;

public sealed class ManyClientsTestsOnPostgres(PostgresDatabase database) : ManyClientsTests(database), IClassFixture<PostgresDatabase>;

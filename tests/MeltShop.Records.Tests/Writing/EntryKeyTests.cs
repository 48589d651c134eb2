using MeltShop.Records.Heats;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Writing;

/// <summary>A thing is done once, however often it is asked for.</summary>
public abstract class EntryKeyTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task SecondArrival_OneAfterTheOther_ReturnsTheFirstResultAndDoesNothing()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();
        var entry = foundry.Entry("WeighIn");

        var first = await database.Recorder.Record(entry, WeighIn(foundry, heat, 100), Ct);
        var second = await database.Recorder.Record(entry, WeighIn(foundry, heat, 200), Ct);

        Assert.Equal((first.Value, false, true), (second.Value, first.IsRepeat, second.IsRepeat));
        await using var db = database.Open();
        Assert.Equal(100, Assert.Single(await db.Weighings.Where(w => w.HeatId == heat.Id).ToListAsync(Ct)).Kg);
    }

    [Fact]
    public async Task SecondArrival_SixteenAtOnce_OneWritesAndAllReturnItsResult()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();
        var entry = foundry.Entry("WeighIn");

        var all = await Task.WhenAll(Enumerable.Range(1, 16).Select(n => Task.Run(() => database.Recorder.Record(entry, WeighIn(foundry, heat, n), Ct), Ct)));

        Assert.All(all, r => Assert.Empty(r.Findings));
        Assert.Single(all.Select(r => r.Value).Distinct());
        Assert.Single(all, r => !r.IsRepeat);
        await using var db = database.Open();
        Assert.Single(await db.Weighings.Where(w => w.HeatId == heat.Id).ToListAsync(Ct));
        Assert.Single(await db.TrailRows.Where(r => r.EntryKey == entry.Key).ToListAsync(Ct));
    }

    [Fact]
    public async Task SecondArrival_AtOnceWithAVersion_IsNoStaleVersion()
    {
        var foundry = await Foundry.Found(database);
        var entry = foundry.Entry("ChangePrice");

        var all = await Task.WhenAll(Enumerable.Range(0, 16).Select(_ => Task.Run(() => database.Recorder.Record(entry, async (db, _, ct) =>
        {
            var steel = await db.Materials.SingleAsync(m => m.Id == foundry.Steel.Id, ct);
            db.Expect(steel, foundry.Steel.Version);
            steel.PricePerTonne = 250m;
            await db.SaveChangesAsync(ct);
            return Written<Guid>.Of(steel.Version);
        }, Ct), Ct)));

        Assert.All(all, r => Assert.Empty(r.Findings));
        Assert.Single(all.Select(r => r.Value).Distinct());
    }

    [Fact]
    public async Task SecondArrival_AfterARefusal_IsTriedAgain()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();
        var entry = foundry.Entry("WeighIn");

        var refused = await database.Recorder.Record(entry, async (db, stamp, ct) =>
        {
            db.Weighings.Add(stamp.Weighing(heat.Id, foundry.Steel.Id, 1));
            await db.SaveChangesAsync(ct);
            return Written<long>.Refused(new Metallurgy.Finding("kg", "mass.negative"));
        }, Ct);
        await using var db = database.Open();
        var kept = await db.Weighings.CountAsync(w => w.HeatId == heat.Id, Ct);
        var again = await database.Recorder.Record(entry, WeighIn(foundry, heat, 2), Ct);

        Assert.Equal("mass.negative", Assert.Single(refused.Findings).Code);
        Assert.Equal(0, kept);
        Assert.True(again is { Succeeded: true, IsRepeat: false });
    }

    [Fact]
    public async Task EntryKey_BeforeAnythingIsWritten_IsClaimed()
    {
        var foundry = await Foundry.Found(database);
        var entry = foundry.Entry("WeighIn");

        var claimed = await database.Recorder.Record(entry, async (db, _, ct) => Written<int>.Of(await db.Entries.CountAsync(e => e.Key == entry.Key, ct)), Ct);

        Assert.Equal(1, claimed.Value);
    }

    [Fact]
    public async Task EntryKey_ThatIsEmpty_IsRefused()
    {
        var foundry = await Foundry.Found(database);

        await Assert.ThrowsAsync<ArgumentException>(() => database.Recorder.Record(foundry.Entry("WeighIn", Guid.Empty), (_, _, _) => Task.FromResult(Written<int>.Of(0)), Ct));
    }

    [Fact]
    public async Task EntryKey_OfAnotherOperation_IsRefused()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();
        var entry = foundry.Entry("WeighIn");
        await database.Recorder.Record(entry, WeighIn(foundry, heat, 1), Ct);

        var other = await database.Recorder.Record(entry with { Operation = "CloseHeat" }, WeighIn(foundry, heat, 1), Ct);

        Assert.Equal(("entryKey", "entryKey.used"), (Assert.Single(other.Findings).Path, other.Findings[0].Code));
        Assert.False(other.IsRepeat);
    }

    private static Func<RecordsContext, Stamp, CancellationToken, Task<Written<long>>> WeighIn(Foundry foundry, Heat heat, double kg) =>
        async (db, stamp, ct) =>
        {
            var weighing = stamp.Weighing(heat.Id, foundry.Steel.Id, kg);
            db.Weighings.Add(weighing);
            await db.SaveChangesAsync(ct);
            return Written<long>.Of(weighing.Id, new ChangeNotice(ChangeKind.Heat, heat.Id));
        };
}

public sealed class EntryKeyTestsOnSqlite(SqliteDatabase database) : EntryKeyTests(database), IClassFixture<SqliteDatabase>;

public sealed class EntryKeyTestsOnPostgres(PostgresDatabase database) : EntryKeyTests(database), IClassFixture<PostgresDatabase>;

using MeltShop.Records.Heats;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Writing;

/// <summary>Somebody else was faster at a row: the write that knows nothing of its version is done again, the edit of what was seen is refused.</summary>
public abstract class RetryTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public async Task Write_ThatSawNoVersion_IsDoneAgainAndOnce(int faster)
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat(HeatState.Charging);
        var entry = foundry.Entry("WeighIn");
        var calls = 0;

        var recorded = await database.Recorder.Record(entry, async (db, stamp, ct) =>
        {
            var row = await db.Heats.SingleAsync(h => h.Id == heat.Id, ct);
            if (++calls <= faster) await BeFaster(db, heat.Id, ct);
            row.State = HeatState.Bath;
            db.Weighings.Add(stamp.Weighing(heat.Id, foundry.Steel.Id, 12));
            await db.SaveChangesAsync(ct);
            return Written<int>.Of(calls);
        }, Ct);

        Assert.Empty(recorded.Findings);
        Assert.Equal((faster + 1, faster + 1), (calls, recorded.Value));
        await using var db = database.Open();
        Assert.Single(await db.Weighings.Where(w => w.HeatId == heat.Id).ToListAsync(Ct));
        Assert.Single(await db.TrailRows.Where(r => r.EntryKey == entry.Key).ToListAsync(Ct));
    }

    [Fact]
    public async Task Write_ToARowThatNeverHolds_IsRefusedInTheEnd()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat(HeatState.Charging);

        var recorded = await database.Recorder.Record(foundry.Entry("WeighIn"), async (db, _, ct) =>
        {
            var row = await db.Heats.SingleAsync(h => h.Id == heat.Id, ct);
            await BeFaster(db, heat.Id, ct);
            row.State = HeatState.Bath;
            await db.SaveChangesAsync(ct);
            return Written<int>.Of(1);
        }, Ct);

        Assert.Equal("version.stale", Assert.Single(recorded.Findings).Code);
    }

    /// <summary>Between reading and saving, the row becomes another version; undone with the rest of the attempt.</summary>
    private static Task<int> BeFaster(RecordsContext db, long heatId, CancellationToken ct) =>
        db.Heats.Where(h => h.Id == heatId).ExecuteUpdateAsync(h => h.SetProperty(x => x.Version, Guid.NewGuid()), ct);
}

public sealed class RetryTestsOnSqlite(SqliteDatabase database) : RetryTests(database), IClassFixture<SqliteDatabase>;

public sealed class RetryTestsOnPostgres(PostgresDatabase database) : RetryTests(database), IClassFixture<PostgresDatabase>;

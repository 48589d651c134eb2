using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Exchange;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Writing;

/// <summary>Rows that are written in bulk are rows like all others: they come back, the trail answers for each, a refusal leaves none.</summary>
public abstract class BulkRowsTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task InsertAll_OfRowsThatNameEachOther_ComeBackAndAreCovered()
    {
        var foundry = await Foundry.Found(database);
        var story = await HeatStory.Tell(foundry, HeatState.Closed);
        var ids = await Bulk(foundry, story, 5);

        await using var db = database.Open();
        var readings = await db.Readings.Where(r => ids.Contains(r.BurnId)).OrderBy(r => r.Id).ToListAsync(Ct);
        Assert.Equal([.. Enumerable.Range(0, 5).Select(i => (Element.C, 3.5 + (i * 0.001), i % 2 == 0, $"text \"{i}\"\t\\n ü"))], readings.Select(r => (r.Element, r.Percent, r.BelowDetection, r.InstrumentText)));
        Assert.Empty((await new TrailCheck(database.Contexts).Run(Ct)).Faults);
        await foundry.Write("After", (after, _) => after.Add(new Burn { SampleId = story.Bath.Id, Ordinal = 99, Readings = [new() { Element = Element.Si, Percent = 1, InstrumentText = "1" }] }));
        Assert.Empty((await new TrailCheck(database.Contexts).Run(Ct)).Faults);
    }

    [Fact]
    public async Task InsertedRow_ChangedOrTakenAwayPastTheProgram_IsFound()
    {
        var foundry = await Foundry.Found(database);
        var ids = await Bulk(foundry, await HeatStory.Tell(foundry, HeatState.Closed), 3);
        string[] changes =
        [
            $"""UPDATE "Burns" SET "Ordinal" = "Ordinal" + 50 WHERE "Id" = {ids[1]}""", $"""UPDATE "Burns" SET "SetAsideReason" = 'x' WHERE "Id" = {ids[0]}""",
            $"""DELETE FROM "Burns" WHERE "Id" = {ids[2]}""",
        ];
        await using var db = database.Open();
        foreach (var change in changes)
        {
            await using var transaction = await db.Database.BeginTransactionAsync(Ct);
            if (change.StartsWith("DELETE", StringComparison.Ordinal) && db.Database.IsSqlite()) await db.Database.ExecuteSqlRawAsync("PRAGMA defer_foreign_keys = ON", Ct);
            else if (change.StartsWith("DELETE", StringComparison.Ordinal)) await db.Database.ExecuteSqlRawAsync("SET LOCAL session_replication_role = replica", Ct);
            await using (var command = await StoredRows.Command(db, change, Ct)) Assert.Equal(1, await command.ExecuteNonQueryAsync(Ct));
            Assert.Contains((await TrailCheck.Run(db, [], Ct)).Faults, f => f.Table == "Burns");
            await transaction.RollbackAsync(Ct);
        }
    }

    [Fact]
    public async Task InsertAll_InAWriteThatIsRefused_LeavesNothing()
    {
        var foundry = await Foundry.Found(database);
        var story = await HeatStory.Tell(foundry, HeatState.Closed);
        await using var db = database.Open();
        var before = await db.Burns.CountAsync(Ct);

        var recorded = await database.Recorder.Record(foundry.Entry("Bulk"), async (inner, _, ct) =>
        {
            await Rows(inner, story, 4, ct);
            return Written<int>.Refused(new Metallurgy.Finding("", "refused"));
        }, Ct);

        Assert.False(recorded.Succeeded);
        Assert.Equal(before, await db.Burns.CountAsync(Ct));
        Assert.Empty((await new TrailCheck(database.Contexts).Run(Ct)).Faults);
    }

    [Fact]
    public async Task InsertAll_OfAValueThatIsTaken_IsAFindingAtItsField()
    {
        var foundry = await Foundry.Found(database);
        var story = await HeatStory.Tell(foundry, HeatState.Closed);
        await Bulk(foundry, story, 2);

        var recorded = await database.Recorder.Record(foundry.Entry("Bulk"), async (db, _, ct) => Written<IReadOnlyList<long>>.Of(await Rows(db, story, 2, ct)), Ct);

        Assert.Equal(("ordinal", "unique.taken"), (Assert.Single(recorded.Findings).Path, recorded.Findings[0].Code));
    }

    [Fact]
    public async Task InsertAll_ThatIsCancelled_StopsAndLeavesNothing()
    {
        var foundry = await Foundry.Found(database);
        var story = await HeatStory.Tell(foundry, HeatState.Closed);
        using var stopping = CancellationTokenSource.CreateLinkedTokenSource(Ct);
        var entry = foundry.Entry("Bulk");

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => database.Recorder.Record(entry, async (db, _, ct) =>
        {
            var ids = await db.FreeIds<Burn>(3, ct);
            await db.InsertAll(new Stopping<Burn>([.. ids.Select((id, i) => new Burn { Id = id, SampleId = story.Bath.Id, Ordinal = 40 + i })], stopping), ct);
            return Written<int>.Of(0);
        }, stopping.Token));

        await using var db = database.Open();
        Assert.Equal((0, 0), (await db.Burns.CountAsync(b => b.Ordinal >= 40 && b.SampleId == story.Bath.Id, Ct), await db.Entries.CountAsync(e => e.Key == entry.Key, Ct)));
    }

    [Fact]
    public async Task InsertAll_OfNoRows_IsNoPartOfTheTrail()
    {
        var foundry = await Foundry.Found(database);
        var entry = foundry.Entry("Bulk");

        await database.Recorder.Record(entry, async (db, _, ct) =>
        {
            await db.InsertAll<Burn>([], ct);
            return Written<int>.Of(0);
        }, Ct);

        await using var db = database.Open();
        Assert.EndsWith("\"rows\":[]}", (await db.TrailRows.SingleAsync(r => r.EntryKey == entry.Key, Ct)).Payload, StringComparison.Ordinal);
    }

    [Fact]
    public async Task FreeIds_OutsideATransaction_AreRefused()
    {
        await using var db = database.Open();

        await Assert.ThrowsAsync<InvalidOperationException>(() => db.FreeIds<Burn>(1, Ct));
    }

    [Fact]
    public async Task FreeIds_AskedForTwice_AreOthers()
    {
        var foundry = await Foundry.Found(database);
        var story = await HeatStory.Tell(foundry, HeatState.Closed);
        var (first, second) = (await Bulk(foundry, story, 3), await Bulk(foundry, story, 3, 20));
        Assert.Equal(6, first.Concat(second).Distinct().Count());
    }

    private async Task<IReadOnlyList<long>> Bulk(Foundry foundry, HeatStory story, int count, int from = 10) =>
        (await database.Recorder.Record(foundry.Entry("Bulk"), async (db, _, ct) => Written<IReadOnlyList<long>>.Of(await Rows(db, story, count, ct, from)), Ct)).Value!;

    private static async Task<IReadOnlyList<long>> Rows(RecordsContext db, HeatStory story, int count, CancellationToken ct, int from = 10)
    {
        var (burns, readings) = (await db.FreeIds<Burn>(count, ct), await db.FreeIds<Laboratory.Reading>(count, ct));
        await db.InsertAll([.. burns.Select((id, i) => new Burn { Id = id, SampleId = story.Bath.Id, Ordinal = from + i })], ct);
        await db.InsertAll(
            [.. readings.Select((id, i) => new Laboratory.Reading { Id = id, BurnId = burns[i], Element = Element.C, Percent = 3.5 + (i * 0.001), BelowDetection = i % 2 == 0, InstrumentText = $"text \"{i}\"\t\\n ü" })], ct);
        return burns;
    }

    /// <summary>Rows of which the second is read when somebody has just cancelled.</summary>
    private sealed class Stopping<TRow>(IReadOnlyList<TRow> rows, CancellationTokenSource stopping) : IReadOnlyCollection<TRow>
    {
        public int Count => rows.Count;

        public IEnumerator<TRow> GetEnumerator()
        {
            foreach (var row in rows)
            {
                yield return row;
                stopping.Cancel();
            }
        }

        System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();
    }
}

public sealed class BulkRowsTestsOnSqlite(SqliteDatabase database) : BulkRowsTests(database), IClassFixture<SqliteDatabase>;

public sealed class BulkRowsTestsOnPostgres(PostgresDatabase database) : BulkRowsTests(database), IClassFixture<PostgresDatabase>;

using MeltShop.Records.Backups;
using MeltShop.Records.Castings;
using MeltShop.Records.Databases;
using MeltShop.Records.Exchange.Archives;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Tests.Exchange;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Databases;

/// <summary>What there is one of: one filling in a ladle, one result of a coin, one card and one tap of a filling, one result of a property.</summary>
public abstract class OneOfEachTests(Database database) : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("meltshop-one-");

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
        GC.SuppressFinalize(this);
    }

    [Fact]
    public async Task Second_OfWhatThereIsOneOf_IsRefusedByTheDatabaseAtItsField()
    {
        var (foundry, story, coin, piece) = await Story();
        var other = await foundry.Heat();
        await foundry.Write("First", (db, stamp) => db.AddRange(Filling(foundry, other, 1), Answer(stamp, story, coin), stamp.Tested(piece)));

        Assert.Equal("ladleId", await TakenBy(foundry, (db, _) => db.Add(Filling(foundry, story.Heat, 2))));
        Assert.Equal("ladleId", await TakenBy(foundry, (db, _) => db.Add(Filling(foundry, story.Heat, 2, TreatedLadleState.Pouring))));
        Assert.Equal("coinOnItsWayId", await TakenBy(foundry, (db, stamp) => db.Add(Answer(stamp, story, coin))));
        Assert.Equal("treatedLadleId", await TakenBy(foundry, (db, stamp) => db.Add(stamp.Card(story.Ladle.Id, foundry.Steel.Id))));
        Assert.Equal("treatedLadleId", await TakenBy(foundry, (db, stamp) => db.Add(stamp.Tap(story.Ladle.Id, story.Heat.Id, 900))));
        Assert.Equal("property", await TakenBy(foundry, (db, stamp) => db.Add(stamp.Tested(piece))));
        // What was poured out, and what corrects, is no second one.
        await foundry.Write("Rest", (db, stamp) => db.AddRange(
            Filling(foundry, story.Heat, 2, TreatedLadleState.Held), Filling(foundry, story.Heat, 3, TreatedLadleState.Abandoned), Answer(stamp, story, coin, db.Samples.Single(s => s.CoinOnItsWayId == coin).Id)));
    }

    [Fact]
    public async Task Write_ThatMeetsWhatThereIsOneOf_IsDoneAgainAndSaysItInItsOwnWords()
    {
        var (foundry, story, _, _) = await Story();
        var calls = 0;

        var refused = await database.Recorder.Record(foundry.Entry("PreparePocket"), (db, _, _) =>
        {
            if (++calls > 1) return Task.FromResult(Written<int>.Refused(new Metallurgy.Finding("vesselId", "ladle.busy")));
            db.AddRange(Filling(foundry, story.Heat, 2), Filling(foundry, story.Heat, 3));
            return Task.FromResult(Written<int>.Of(1));
        }, Ct);

        Assert.Equal((2, "vesselId", "ladle.busy"), (calls, Assert.Single(refused.Findings).Path, refused.Findings[0].Code));
    }

    [Fact]
    public async Task Two_ThatAnEarlierVersionLetIn_StayMoveAlongAndKeepAThirdOut()
    {
        var (foundry, story, coin, _) = await Story();
        var other = await foundry.Heat();
        await using var db = database.Open();
        await OneOfEach.Lift(db, Ct);
        await foundry.Write("Earlier", (inner, stamp) => inner.AddRange(
            Filling(foundry, other, 1), Filling(foundry, story.Heat, 2), Answer(stamp, story, coin), Answer(stamp, story, coin)));

        await RecordsDatabase.MigrateAsync(database.Options, Ct);

        Assert.Equal((2, 2), (await db.TreatedLadles.CountAsync(l => l.State == TreatedLadleState.Prepared && l.LadleId == foundry.Ladle.Id, Ct), await db.Samples.CountAsync(s => s.CoinOnItsWayId == coin, Ct)));
        Assert.Equal("ladleId", await TakenBy(foundry, (inner, _) => inner.Add(Filling(foundry, story.Heat, 3))));
        Assert.Equal("coinOnItsWayId", await TakenBy(foundry, (inner, stamp) => inner.Add(Answer(stamp, story, coin))));
        Assert.Empty((await new TrailCheck(database.Contexts).Run(Ct)).Faults);

        var file = Path.Combine(folder.FullName, "shop.zip");
        await new ArchiveWriter(database.Contexts, database.Clock).Backup(file, Ct);
        foreach (var target in await EmptyDatabases.Both(folder.FullName))
        {
            Assert.Equal(BackupState.Done, (await new ArchiveReader(target).Read(file, Ct)).State);
            Assert.Equal(await RowCounts.Of(database.Contexts), await RowCounts.Of(new ContextFactory(target)));
            await using var copy = new ContextFactory(target).CreateDbContext();
            copy.Add(Filling(foundry, story.Heat, 3));
            Assert.Equal("ladleId", UniqueViolation.Path(copy.Model, UniqueViolation.TakenIn(await Assert.ThrowsAsync<DbUpdateException>(() => copy.SaveChangesAsync(Ct)))!));
        }
    }

    private async Task<(Foundry Foundry, HeatStory Story, long CoinId, long PieceId)> Story()
    {
        var foundry = await Foundry.Found(database);
        var story = await HeatStory.Tell(foundry, HeatState.Closed);
        CoinOnItsWay coin = null!;
        TestPiece piece = null!;
        await foundry.Write("Story", (db, stamp) => db.AddRange(coin = stamp.Sent(story.Heat.Id, "7"), piece = stamp.TestPiece(story.Ladle.Id)));
        return (foundry, story, coin.Id, piece.Id);
    }

    private static TreatedLadle Filling(Foundry foundry, Heat heat, int ordinal, TreatedLadleState state = TreatedLadleState.Prepared) =>
        new() { HeatId = heat.Id, LadleId = foundry.Ladle.Id, Ordinal = ordinal, State = state };

    private static Sample Answer(Stamp stamp, HeatStory story, long coinId, long? supersedes = null) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt, SupersedesId = supersedes,
        HeatId = story.Heat.Id, Kind = SampleKind.Bath, CoinNumber = "7", CoinOnItsWayId = coinId,
    };

    private async Task<string> TakenBy(Foundry foundry, Action<RecordsContext, Stamp> change)
    {
        var refused = await database.Recorder.Record(foundry.Entry("Second"), (db, stamp, _) =>
        {
            change(db, stamp);
            return Task.FromResult(Written<int>.Of(0));
        }, Ct);
        Assert.Equal("unique.taken", Assert.Single(refused.Findings).Code);
        return refused.Findings[0].Path;
    }
}

public sealed class OneOfEachTestsOnSqlite(SqliteDatabase database) : OneOfEachTests(database), IClassFixture<SqliteDatabase>;

public sealed class OneOfEachTestsOnPostgres(PostgresDatabase database) : OneOfEachTests(database), IClassFixture<PostgresDatabase>;

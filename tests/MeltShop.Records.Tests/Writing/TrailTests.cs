using System.Text.Json;
using MeltShop.Records.Databases;
using MeltShop.Records.Heats;
using MeltShop.Records.Keeping;
using MeltShop.Records.Reading.Trail;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Writing;

/// <summary>Each test breaks one thing, sees it found, and puts it back: the tests of a class share a database.</summary>
public abstract class TrailTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Trail_OfAWholeHeat_Holds()
    {
        await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);

        var report = await Check();

        Assert.Empty(report.Faults);
        await using var db = database.Open();
        var last = await db.TrailRows.OrderByDescending(r => r.Number).FirstAsync(Ct);
        Assert.Equal((last.Number, last.Hash), (report.Entries, report.HeadHash));
        Assert.Equal(await db.Entries.CountAsync(Ct), report.Entries);
        Assert.True(report.Rows > 20);
    }

    [Fact]
    public async Task TrailRow_OfAnEntry_HoldsWhatWasAskedWhatCameOfItAndTheRows()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();
        var entry = foundry.Entry("WeighIn");
        await database.Recorder.Record(entry, async (db, stamp, ct) =>
        {
            var weighing = stamp.Weighing(heat.Id, foundry.Steel.Id, 12.5);
            db.Weighings.Add(weighing);
            await db.SaveChangesAsync(ct);
            return Written<long>.Of(weighing.Id);
        }, Ct);

        await using var context = database.Open();
        var row = await context.TrailRows.SingleAsync(r => r.EntryKey == entry.Key, Ct);
        Assert.Equal(("WeighIn", foundry.Person.Id, "Ida Anders", "Lab tablet"), (row.Operation, row.PersonId, row.PersonName, row.Station));
        using var payload = JsonDocument.Parse(row.Payload);
        Assert.Equal("WeighIn", payload.RootElement.GetProperty("asked").GetProperty("operation").GetString());
        var id = payload.RootElement.GetProperty("result").GetInt64();
        var image = Assert.Single(payload.RootElement.GetProperty("rows").EnumerateArray());
        Assert.Equal(("Weighings", $"{id}", "12.5"), (
            image.GetProperty("table").GetString(), image.GetProperty("key").GetString(), image.GetProperty("columns").GetProperty("Kg").GetString()));
        Assert.False(image.TryGetProperty("was", out _)); // a new row was nothing before
    }

    [Fact]
    public async Task Trail_OfAMassOfMinusNought_HoldsThoughADatabaseDropsTheSign()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();
        await database.Recorder.Record(foundry.Entry("WeighIn"), (db, stamp, _) =>
        {
            db.Weighings.Add(stamp.Weighing(heat.Id, foundry.Steel.Id, -0.0));
            return Task.FromResult(Written<long>.Of(0));
        }, Ct);

        Assert.Empty((await Check()).Faults);
    }

    [Fact]
    public async Task TrailPage_OfEntriesWithManyRows_LeavesTheRowsInTheDatabase()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();
        var entry = foundry.Entry("WeighIn") with { Payload = new { Remark = "so many ,\"rows\":[ of them", Rows = 2 } };
        await database.Recorder.Record(entry, (db, stamp, _) =>
        {
            db.Weighings.AddRange(stamp.Weighing(heat.Id, foundry.Steel.Id, 1), stamp.Weighing(heat.Id, foundry.Steel.Id, 2));
            return Task.FromResult(Written<Dictionary<string, int>>.Of(new() { ["rows"] = 2 }));
        }, Ct);

        var shown = (await new TrailPage(database.Contexts).Before(null, Ct)).Entries[0];

        Assert.Equal("so many ,\"rows\":[ of them", shown.Asked.GetProperty("remark").GetString());
        Assert.Equal((2, 2), (shown.Asked.GetProperty("rows").GetInt32(), shown.Result.GetProperty("rows").GetInt32()));
        await using var db = database.Open();
        var read = await TrailPage.WithoutRows(db.TrailRows.Where(r => r.EntryKey == entry.Key)).SingleAsync(Ct);
        Assert.DoesNotContain("table", read.Payload, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("PersonName", "trail.hash")]
    [InlineData("Station", "trail.hash")]
    [InlineData("Operation", "trail.hash")]
    [InlineData("Payload", "trail.hash")]
    [InlineData("Payload", "trail.unreadable")]
    [InlineData("PreviousHash", "trail.previous")]
    [InlineData("Hash", "trail.hash")]
    public async Task TrailRow_OneByteFlipped_IsFound(string column, string code)
    {
        var foundry = await Foundry.Found(database);
        await using var db = database.Open();
        var number = await db.TrailRows.MaxAsync(r => r.Number, Ct);
        var text = await db.Ask<string>($"""SELECT "{column}" AS "Value" FROM "TrailRows" WHERE "Number" = {number}""");
        var flipped = text[..^1] + (char)(text[^1] ^ 1);

        await Unguarded(db, "TrailRows", $$"""UPDATE "TrailRows" SET "{{column}}" = {0} WHERE "Number" = {{number}}""", flipped);
        var broken = await Check();
        await Unguarded(db, "TrailRows", $$"""UPDATE "TrailRows" SET "{{column}}" = {0} WHERE "Number" = {{number}}""", text);

        Assert.Contains(broken.Faults, f => f.Code == code && f.Number == number);
        Assert.Empty((await Check()).Faults);
    }

    [Fact]
    public async Task TrailHead_MovedBack_IsFound()
    {
        await Foundry.Found(database);
        await using var db = database.Open();

        await db.TrailHeads.ExecuteUpdateAsync(h => h.SetProperty(x => x.Number, x => x.Number - 1), Ct);
        var broken = await Check();
        await db.TrailHeads.ExecuteUpdateAsync(h => h.SetProperty(x => x.Number, x => x.Number + 1), Ct);

        Assert.Contains(broken.Faults, f => f.Code == "trail.head");
    }

    [Fact]
    public async Task Record_ChangedBehindTheTrail_IsFound()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        await using var db = database.Open();

        await Unguarded(db, "Readings", """UPDATE "Readings" SET "Percent" = "Percent" + 0.01 WHERE "InstrumentText" = '3.61'""");
        var changed = await Check();
        await Unguarded(db, "Readings", """UPDATE "Readings" SET "Percent" = 3.61 WHERE "InstrumentText" = '3.61'""");

        Assert.Contains(changed.Faults, f => f is { Code: "row.changed", Table: "Readings", Column: "Percent" });
        Assert.Empty((await Check()).Faults);
        Assert.Equal(3.61, story.Bath.Burns[0].Readings[0].Percent);
    }

    [Fact]
    public async Task Record_AddedOrRemovedBehindTheTrail_IsFound()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("AddWindow", (db, _) => db.GradeWindows.Add(new() { GradeId = foundry.Grade.Id, Stage = Grades.WindowStage.Furnace, Quantity = "C", Least = 3 }));
        await using var db = database.Open();

        await db.Database.ExecuteSqlAsync($"""INSERT INTO "GradeWindows" ("GradeId", "Stage", "Quantity", "Margin") VALUES ({foundry.Grade.Id}, 'Poured', 'Si', 0)""", Ct);
        var added = await Check();
        await db.GradeWindows.Where(w => w.GradeId == foundry.Grade.Id && w.Quantity == "Si").ExecuteDeleteAsync(Ct);
        Assert.Empty((await Check()).Faults);
        var id = await db.GradeWindows.Where(w => w.GradeId == foundry.Grade.Id).Select(w => w.Id).SingleAsync(Ct);
        await db.GradeWindows.Where(w => w.Id == id).ExecuteDeleteAsync(Ct);
        var removed = await Check();
        await db.Database.ExecuteSqlAsync(
            $"""INSERT INTO "GradeWindows" ("Id", "GradeId", "Stage", "Quantity", "Least", "Margin") VALUES ({id}, {foundry.Grade.Id}, 'Furnace', 'C', 3, 0)""", Ct);

        Assert.Equal("row.unknown", Assert.Single(added.Faults).Code);
        Assert.Equal("row.missing", Assert.Single(removed.Faults).Code);
        Assert.Empty((await Check()).Faults);
    }

    [Fact]
    public async Task Row_TakenAwayThroughTheRecorder_IsGoneFromTheTrailWithWhatItHeld()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("AddWindow", (db, _) => db.GradeWindows.Add(new() { GradeId = foundry.Grade.Id, Stage = Grades.WindowStage.Furnace, Quantity = "Mn", Least = 0.25 }));
        var entry = foundry.Entry("RemoveWindow");
        await database.Recorder.Record(entry, (db, _, _) =>
        {
            db.GradeWindows.Remove(db.GradeWindows.Single(w => w.GradeId == foundry.Grade.Id));
            return Task.FromResult(Written<int>.Of(0));
        }, Ct);

        var image = Assert.Single(await Images(entry), i => i.Table == "GradeWindows");
        Assert.Null(image.Columns);
        Assert.Equal(("Mn", "0.25"), (image.Was!["Quantity"], image.Was["Least"]));
        Assert.Empty((await Check()).Faults);
    }

    [Fact]
    public async Task PartOfARow_TakenAway_LeavesItsColumnsEmpty()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("SetRecipe", (db, _) => db.Grades.Single(g => g.Id == foundry.Grade.Id).Recipe = new() { TargetMgPercent = 0.045, InoculantCode = "FeSi75", MinutesToLastMould = 10 });
        var entry = foundry.Entry("RemoveRecipe");
        await database.Recorder.Record(entry, (db, _, _) =>
        {
            db.Grades.Single(g => g.Id == foundry.Grade.Id).Recipe = null;
            return Task.FromResult(Written<int>.Of(0));
        }, Ct);

        var image = Assert.Single(await Images(entry), i => i.Was?.Values.Contains("FeSi75") == true);
        Assert.All(image.Columns!.Values, Assert.Null);
        Assert.Empty((await Check()).Faults);
    }

    [Fact]
    public async Task RowThatChanged_IsKeptWithWhatChangedOnly()
    {
        var foundry = await Foundry.Found(database);
        var entry = foundry.Entry("ChangePrice");
        await database.Recorder.Record(entry, (db, _, _) =>
        {
            db.Materials.Single(m => m.Id == foundry.Steel.Id).PricePerTonne = 250m;
            return Task.FromResult(Written<int>.Of(0));
        }, Ct);

        var image = Assert.Single(await Images(entry));
        Assert.Equal(["PricePerTonne", "Version"], image.Was!.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(("Steel scrap", false), (image.Columns!["Name"], image.Columns.ContainsKey("StockKg")));
    }

    [Theory]
    [InlineData(1000.0, 1000.0, true)]
    [InlineData(1000.0, 1000.0 + 1e-7, true)]
    [InlineData(1000.0, 1000.01, false)]
    [InlineData(1000.0, null, false)]
    [InlineData(null, 5.0, false)]
    [InlineData(null, null, true)]
    public async Task Stock_ThatIsNotTheSumOfItsLedger_IsFound(double? counted, double? stock, bool holds)
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("Count", (db, stamp) =>
        {
            if (counted is { } kg) db.StockFacts.Add(stamp.Stock(foundry.Steel.Id, kg, Yard.StockKind.Counted));
        });
        await using var db = database.Open();

        await db.Materials.Where(m => m.Id == foundry.Steel.Id).ExecuteUpdateAsync(m => m.SetProperty(x => x.StockKg, stock), Ct);
        var report = await Check();
        await db.Materials.Where(m => m.Id == foundry.Steel.Id).ExecuteUpdateAsync(m => m.SetProperty(x => x.StockKg, counted), Ct);

        Assert.Equal(holds ? [] : [("row.changed", "Materials", $"{foundry.Steel.Id}", "StockKg")], report.Faults.Select(f => (f.Code, f.Table!, f.Key!, f.Column!)));
        Assert.Empty((await Check()).Faults);
    }

    [Theory]
    [InlineData(1000.0, 1000.0 + 1e-7, true)]
    [InlineData(1000.0, 1000.01, false)]
    [InlineData(1000.0, 0.0, false)]
    [InlineData(null, 0.0, true)]
    [InlineData(null, 1e-300, false)]
    public async Task Liquid_ThatIsNotTheSumOfItsLedger_IsFound(double? charged, double liquid, bool holds)
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("WeighIn", (db, stamp) =>
        {
            if (charged is null) return;
            FurnaceMetal wrong = stamp.Metal(foundry.Furnace.Id, FurnaceMetalKind.Charged, 7);
            db.Add(wrong);
            db.SaveChanges();
            db.Add(stamp.Metal(foundry.Furnace.Id, FurnaceMetalKind.Charged, charged.Value, supersedes: wrong.Id));
        });
        await using var db = database.Open();
        Task Put(double kg) => db.Furnaces.Where(f => f.Id == foundry.Furnace.Id).ExecuteUpdateAsync(f => f.SetProperty(x => x.LiquidKg, kg), Ct);

        await Put(liquid);
        var report = await Check();
        await Put(charged ?? 0);

        Assert.Equal(holds ? [] : [("row.changed", "Furnaces", $"{foundry.Furnace.Id}", "LiquidKg")], report.Faults.Select(f => (f.Code, f.Table!, f.Key!, f.Column!)));
        Assert.Empty((await Check()).Faults);
    }

    private async Task<List<RowImage>> Images(EntryStamp entry)
    {
        await using var db = database.Open();
        using var payload = JsonDocument.Parse((await db.TrailRows.SingleAsync(r => r.EntryKey == entry.Key, Ct)).Payload);
        return payload.RootElement.GetProperty("rows").Deserialize<List<RowImage>>(RecordsJson.Options)!;
    }

    private Task<TrailReport> Check() => new TrailCheck(database.Contexts).Run(Ct);

    /// <summary>Does what somebody with the owner's rights could: takes the triggers off, writes, and puts them back.</summary>
    protected static async Task Unguarded(RecordsContext db, string table, string statement, params object[] values)
    {
        await using var transaction = await db.Database.BeginTransactionAsync(Ct);
        string[] drops = db.Database.ProviderName!.EndsWith("Sqlite", StringComparison.Ordinal)
            ? [$"""DROP TRIGGER "{table}_unchanged" """, $"""DROP TRIGGER "{table}_undeleted" """]
            : [$"""DROP TRIGGER "kept_as_written" ON "{table}" """];
        foreach (var drop in drops) await db.Send(drop);
        Assert.True(await db.Send(statement, values) > 0);
        await AppendOnlyTriggers.Apply(db, Ct);
        await transaction.CommitAsync(Ct);
    }
}

public sealed class TrailTestsOnSqlite(SqliteDatabase database) : TrailTests(database), IClassFixture<SqliteDatabase>
{
    private readonly Database database = database;

    /// <summary>SQLite keeps whatever it is given; PostgreSQL refuses it.</summary>
    [Fact]
    public async Task TrailRow_OfAnotherType_IsUnreadableByItsNumber()
    {
        await Foundry.Found(database);
        await using var db = database.Open();
        var number = await db.TrailRows.MaxAsync(r => r.Number, TestContext.Current.CancellationToken);
        var instant = await db.Ask<long>($"""SELECT "EnteredAt" AS "Value" FROM "TrailRows" WHERE "Number" = {number}""");

        await Unguarded(db, "TrailRows", $"""UPDATE "TrailRows" SET "EnteredAt" = 'noon' WHERE "Number" = {number}""");
        var broken = await new TrailCheck(database.Contexts).Run(TestContext.Current.CancellationToken);
        await Unguarded(db, "TrailRows", $"""UPDATE "TrailRows" SET "EnteredAt" = {instant} WHERE "Number" = {number}""");

        Assert.Contains(broken.Faults, f => f.Code == "trail.unreadable" && f.Number == number);
        Assert.True((await new TrailCheck(database.Contexts).Run(TestContext.Current.CancellationToken)).Holds);
    }
}

public sealed class TrailTestsOnPostgres(PostgresDatabase database) : TrailTests(database), IClassFixture<PostgresDatabase>;

using System.Text.Json.Nodes;
using MeltShop.Records.Heats;
using MeltShop.Records.Keeping;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Writing;

/// <summary>A stored value beside what the trail says of it, or where the trail is older than the column and says nothing.</summary>
public abstract class WrittenRowsTests(Database database)
{
    private const string NoId = "00000000-0000-0000-0000-000000000000";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("Furnaces", "HighestC", "NULL", null, true)]
    [InlineData("Furnaces", "HighestC", "0.0", null, false)]
    [InlineData("Furnaces", "CapacityKg", "0.0", null, true)]
    [InlineData("Furnaces", "CapacityKg", "1.0", null, false)]
    [InlineData("Furnaces", "IsActive", "FALSE", null, true)]
    [InlineData("Furnaces", "IsActive", "TRUE", null, false)]
    [InlineData("Furnaces", "Name", "''", null, true)]
    [InlineData("Furnaces", "Name", "'x'", null, false)]
    [InlineData("Furnaces", "Version", $"'{NoId}'", null, true)]
    [InlineData("Furnaces", "Version", "'10000000-0000-0000-0000-000000000000'", null, false)]
    [InlineData("TreatedLadles", "Ordinal", "0", null, true)]
    [InlineData("TreatedLadles", "Ordinal", "7", null, false)]
    [InlineData("Heats", "StartedAt", "\"StartedAt\"", null, false)]
    [InlineData("Furnaces", "CapacityKg", "0.0", "-0", true)]
    [InlineData("Furnaces", "CapacityKg", "0.0", "0.5", false)]
    [InlineData("Furnaces", "CapacityKg", "0.5", "-0", false)]
    [InlineData("Furnaces", "Name", "'0'", "-0", false)]
    [InlineData("TreatedLadles", "Ordinal", "0", "-0", false)]
    public async Task Value_AgainstWhatTheTrailSays_AgreesOrIsFoundByItsColumn(string table, string column, string stored, string? written, bool agrees)
    {
        var foundry = await Foundry.Found(database);
        var story = await HeatStory.Tell(foundry, HeatState.Closed);
        var id = $"{table switch { "Furnaces" => foundry.Furnace.Id, "Heats" => story.Heat.Id, _ => story.Ladle.Id }}";
        await using var db = database.Open();
        await db.Unguard();
        await using var transaction = await db.Database.BeginTransactionAsync(Ct);
        await db.Send($"UPDATE \"{table}\" SET \"{column}\" = {stored} WHERE \"Id\" = {id}");
        var rows = new WrittenRows();
        foreach (var row in await db.TrailRows.AsNoTracking().OrderBy(r => r.Number).ToListAsync(Ct)) Assert.True(rows.Add(Said(row, table, id, column, written)));

        var faults = await rows.Compare(db, Ct);

        await transaction.RollbackAsync(Ct);
        Assert.Equal(agrees ? [] : [("row.changed", table, id, column)], faults.Select(f => (f.Code, f.Table!, f.Key!, f.Column!)));
    }

    /// <summary>The row of the trail with another text for a column, or without that column.</summary>
    private static TrailRow Said(TrailRow row, string table, string key, string column, string? text)
    {
        var payload = JsonNode.Parse(row.Payload)!;
        foreach (var image in payload["rows"]!.AsArray().Where(i => (string?)i!["table"] == table && (string?)i["key"] == key))
        {
            var columns = image!["columns"]!.AsObject();
            columns.Remove(column);
            if (text is not null) columns[column] = text;
        }

        return new()
        {
            Number = row.Number, EntryKey = row.EntryKey, Operation = row.Operation, PersonId = row.PersonId, PersonName = row.PersonName, Station = row.Station,
            EnteredAt = row.EnteredAt, Payload = payload.ToJsonString(), PreviousHash = row.PreviousHash, Hash = row.Hash,
        };
    }
}

public sealed class WrittenRowsTestsOnSqlite(SqliteDatabase database) : WrittenRowsTests(database), IClassFixture<SqliteDatabase>;

public sealed class WrittenRowsTestsOnPostgres(PostgresDatabase database) : WrittenRowsTests(database), IClassFixture<PostgresDatabase>;

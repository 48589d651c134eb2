using MeltShop.Records.Exchange;
using MeltShop.Records.Heats;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Writing;

/// <summary>Whatever somebody changes in a stored value past the program is found, wherever it is.</summary>
public abstract class TamperingTests(Database database)
{
    private const int Seed = 20261125;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>300, or as many as MELTSHOP_CHANGES says.</summary>
    private static int Changes => int.TryParse(Environment.GetEnvironmentVariable("MELTSHOP_CHANGES"), out var count) ? count : 300;

    [Fact]
    public async Task StoredValue_ChangedAtRandom_IsFoundEachTime()
    {
        TestContext.Current.TestOutputHelper!.WriteLine($"seed {Seed}, {Changes} changes");
        var random = new Random(Seed);
        await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        var places = await Places();
        await using var db = database.Open();
        await db.Unguard();
        Assert.Empty((await Check()).Faults);

        var refused = 0;
        for (var n = 0; n < Changes; n++)
        {
            var place = places[random.Next(places.Count)];
            await using var transaction = await db.Database.BeginTransactionAsync(Ct);
            var before = await Value(db, place);
            var after = Changed(place.Column.Kind, before, random);
            if (!await Put(db, place, after))
            {
                refused++; // the value is there already in another row and has to be unique: the database itself said no
                continue;
            }

            var report = await TrailCheck.Run(db, [], Ct);
            Assert.True(report.Faults.Any(f => f.Table == place.Table.Name || place.Table.Name.StartsWith("Trail", StringComparison.Ordinal)),
                $"seed {Seed}, change {n}: {place.Table.Name}.{place.Column.Name} at {place.Where}: '{before}' became '{after}' unseen");
            await transaction.RollbackAsync(Ct);
        }

        Assert.True(refused < Changes / 20, $"{refused} of {Changes} were refused by the database: the test changes next to nothing");
        Assert.Empty((await Check()).Faults);
    }

    /// <summary>As somebody would write it at the database's prompt.</summary>
    protected abstract string Literal(object value);

    private Task<TrailReport> Check() => new TrailCheck(database.Contexts).Run(Ct);

    /// <summary>Each column of each row of the tables that the trail answers for, the trail itself included; keys are no values.</summary>
    private async Task<List<(StoredTable Table, StoredColumn Column, string Where)>> Places()
    {
        await using var db = database.Open();
        var covered = CoveredTables.Of(db).Select(c => c.Table.Name).Append("TrailRows").Append("TrailHeads").Append("HeatCounters").ToHashSet();
        var places = new List<(StoredTable, StoredColumn, string)>();
        foreach (var table in StoredTables.Of(db).Where(t => covered.Contains(t.Name)))
        {
            await foreach (var row in StoredRows.Read(db, table, Ct))
            {
                var where = string.Join(" AND ", table.Key.Zip(table.KeyPlaces).Select(k => $"\"{k.First}\" = {Literal(row[k.Second]!)}"));
                places.AddRange(table.Columns.Where(c => !table.Key.Contains(c.Name)).Select(c => (table, c, where)));
            }
        }

        return places;
    }

    private static async Task<object?> Value(RecordsContext db, (StoredTable Table, StoredColumn Column, string Where) place)
    {
        await using var command = await StoredRows.Command(db, $"SELECT \"{place.Column.Name}\" FROM \"{place.Table.Name}\" WHERE {place.Where}", Ct);
        var value = await command.ExecuteScalarAsync(Ct);
        return db.Database.IsSqlite() ? StoredValue.OfSqlite(place.Column.Kind, value) : StoredValue.OfPostgres(value);
    }

    /// <returns>False where a unique index refuses it.</returns>
    private async Task<bool> Put(RecordsContext db, (StoredTable Table, StoredColumn Column, string Where) place, object value)
    {
        await using var command = await StoredRows.Command(db, $"UPDATE \"{place.Table.Name}\" SET \"{place.Column.Name}\" = {Literal(value)} WHERE {place.Where}", Ct);
        try
        {
            Assert.Equal(1, await command.ExecuteNonQueryAsync(Ct));
            return true;
        }
        catch (System.Data.Common.DbException e) when (UniqueViolation.TakenIn(new DbUpdateException("", e)) is not null)
        {
            return false;
        }
    }

    /// <summary>Another value of the same kind: a flipped bit of a number, a changed sign of a text.</summary>
    private static object Changed(ValueKind kind, object? value, Random random) => (kind, value) switch
    {
        (ValueKind.Integer, long number) => number ^ (1L << random.Next(30)),
        (ValueKind.Integer, _) => random.Next(1, 1000),
        (ValueKind.Number, double number) => Flipped(number, random),
        (ValueKind.Number, _) => random.NextDouble(),
        (ValueKind.YesNo, bool yes) => !yes,
        (ValueKind.YesNo, _) => random.Next(2) == 0,
        (ValueKind.Instant, DateTime instant) => instant.AddMicroseconds(random.Next(1, 1_000_000)),
        (ValueKind.Instant, _) => new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc),
        (ValueKind.Identifier, _) => new Guid(random.Next(), 0, 0, [1, 2, 3, 4, 5, 6, 7, 8]),
        (_, string { Length: > 0 } text) => Flipped(text, random),
        _ => "x",
    };

    private static double Flipped(double number, Random random)
    {
        var other = BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(number) ^ (1L << (random.Next(12) + 40)));
        return double.IsFinite(other) ? other : -number - 1;
    }

    private static string Flipped(string text, Random random)
    {
        var place = random.Next(text.Length);
        return string.Concat(text.AsSpan(0, place), char.IsLetter(text[place]) && random.Next(2) == 0
            ? (char.IsUpper(text[place]) ? char.ToLowerInvariant(text[place]) : char.ToUpperInvariant(text[place])).ToString()
            : text[place] == '7' ? "8" : "7", text.AsSpan(place + 1)) is var other && other != text ? other : text + "7";
    }
}

public sealed class TamperingTestsOnSqlite(SqliteDatabase database) : TamperingTests(database), IClassFixture<SqliteDatabase>
{
    protected override string Literal(object value) => StoredValue.ForSqlite(value) switch
    {
        string text => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'",
        double number => number.ToString("R", System.Globalization.CultureInfo.InvariantCulture) is var digits && digits.AsSpan().ContainsAny(".E") ? digits : digits + ".0",
        var other => StoredValue.Text(other)!,
    };
}

public sealed class TamperingTestsOnPostgres(PostgresDatabase database) : TamperingTests(database), IClassFixture<PostgresDatabase>
{
    protected override string Literal(object value) => value switch
    {
        long number => StoredValue.Text(number)!,
        bool yes => yes ? "true" : "false",
        _ => $"'{StoredValue.Text(value)!.Replace("'", "''", StringComparison.Ordinal)}'",
    };
}

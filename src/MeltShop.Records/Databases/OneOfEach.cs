using System.Text.Json;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Databases;

/// <summary>
/// What the database itself keeps single beside the unique indexes of the model, because earlier versions of this program did not. Set after each migration
/// and not in one: where two of a kind came in then, both stay as they are, the second is excepted from the index by its id, and a third is refused.
/// </summary>
/// <param name="Name">Of the index.</param>
/// <param name="Table">Whose rows are told apart.</param>
/// <param name="Columns">What no two of them share.</param>
/// <param name="Which">The rows that count.</param>
internal sealed record OneOfEach(string Name, string Table, IReadOnlyList<string> Columns, string Which)
{
    private const string First = "\"SupersedesId\" IS NULL";

    public static IReadOnlyList<OneOfEach> All { get; } =
    [
        new("IX_Samples_OneOfACoin", "Samples", ["CoinOnItsWayId"], $"\"CoinOnItsWayId\" IS NOT NULL AND {First}"),
        new("IX_TreatedLadles_OneInALadle", "TreatedLadles", ["LadleId"], "\"State\" IN ('Prepared', 'Tapped', 'Pouring')"),
        new("IX_PocketCards_OneOfAFilling", "PocketCards", ["TreatedLadleId"], First),
        new("IX_Taps_OneOfAFilling", "Taps", ["TreatedLadleId"], First),
        new("IX_TestResults_OneOfAProperty", "TestResults", ["TestPieceId", "Property"], First),
    ];

    /// <summary>The last column as a path, as <see cref="Writing.UniqueViolation"/> answers; null where the database speaks of something else.</summary>
    public static string? Path(string taken) =>
        All.FirstOrDefault(one => taken == one.Name || taken == string.Join(", ", one.Columns.Select(column => $"{one.Table}.{column}"))) is { } found
            ? JsonNamingPolicy.CamelCase.ConvertName(found.Columns[^1]) : null;

    /// <summary>Makes the indexes that are missing.</summary>
    public static async Task Apply(RecordsContext db, CancellationToken ct)
    {
        var there = await Names(db, ct);
        foreach (var one in All.Where(one => !there.Contains(one.Name))) await one.Make(db, ct);
    }

    /// <summary>Takes them away, for rows of another database that come as they are.</summary>
    public static Task Lift(RecordsContext db, CancellationToken ct) =>
        db.Database.ExecuteSqlRawAsync(string.Join('\n', All.Select(one => $"DROP INDEX IF EXISTS \"{one.Name}\";")), ct);

    private static async Task<HashSet<string>> Names(RecordsContext db, CancellationToken ct)
    {
        var names = db.Database.IsSqlite()
            ? db.Database.SqlQuery<string>($"""SELECT name AS "Value" FROM sqlite_master WHERE type = 'index'""")
            : db.Database.SqlQuery<string>($"""SELECT indexname::text AS "Value" FROM pg_indexes WHERE schemaname = current_schema()""");
        return [.. await names.ToListAsync(ct)];
    }

    private async Task Make(RecordsContext db, CancellationToken ct)
    {
        var columns = string.Join(", ", Columns.Select(column => $"\"{column}\""));
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
#pragma warning disable EF1002 // names of the model
        if (!db.Database.IsSqlite()) await db.Database.ExecuteSqlRawAsync($"LOCK TABLE \"{Table}\" IN SHARE MODE", ct);
        var second = await db.Database.SqlQueryRaw<long>($"""
            SELECT "Id" AS "Value" FROM "{Table}" WHERE {Which} AND "Id" NOT IN (SELECT MIN("Id") FROM "{Table}" WHERE {Which} GROUP BY {columns})
            """).ToListAsync(ct);
        var except = second.Count == 0 ? "" : $" AND \"Id\" NOT IN ({string.Join(", ", second.Order())})";
        await db.Database.ExecuteSqlRawAsync($"CREATE UNIQUE INDEX \"{Name}\" ON \"{Table}\" ({columns}) WHERE {Which}{except}", ct);
#pragma warning restore EF1002
        await transaction.CommitAsync(ct);
    }
}

using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Databases;

/// <summary>Asks a database how it would answer a statement.</summary>
public static partial class Plans
{
    /// <summary>EF prints SQLite's parameters as <c>.param set @name value</c> before the statement.</summary>
    public static Task<string> OfSqlite(Database database, string statement) =>
        Explain(database, "EXPLAIN QUERY PLAN ", SqliteParameter(), statement, 3);

    /// <summary>EF prints PostgreSQL's parameters as <c>-- @name='value'</c> before the statement.</summary>
    /// <param name="isAnalyzed">Nothing was written since it was last analyzed.</param>
    public static async Task<string> OfPostgres(Database database, string statement, bool isAnalyzed = false)
    {
        await using var db = database.Open();
        if (!isAnalyzed) await db.Database.ExecuteSqlRawAsync("ANALYZE", TestContext.Current.CancellationToken);
        return await Explain(database, "EXPLAIN ", PostgresParameter(), statement, 0);
    }

    private static async Task<string> Explain(Database database, string word, Regex parameter, string statement, int column)
    {
        var sql = parameter.Replace(statement.Split("This LINQ query")[0], ""); // EF's remark about split queries
        foreach (var match in parameter.Matches(statement).OrderByDescending(m => m.Groups[1].Length)) // @p10 before @p1
            sql = sql.Replace(match.Groups[1].Value, match.Groups[2].Value, StringComparison.Ordinal);
        await using var db = database.Open();
        await db.Database.OpenConnectionAsync(TestContext.Current.CancellationToken);
        await using var command = db.Database.GetDbConnection().CreateCommand();
#pragma warning disable CA2100 // the statement is EF's own
        command.CommandText = word + sql;
#pragma warning restore CA2100
        var lines = new List<string>();
        await using var reader = await command.ExecuteReaderAsync(TestContext.Current.CancellationToken);
        while (await reader.ReadAsync(TestContext.Current.CancellationToken)) lines.Add(reader.GetString(column));
        return string.Join('\n', lines);
    }

    [GeneratedRegex(@"^\.param set (@\w+) (.+)$", RegexOptions.Multiline)]
    private static partial Regex SqliteParameter();

    [GeneratedRegex(@"^-- (@\w+)=('[^']*').*$", RegexOptions.Multiline)]
    private static partial Regex PostgresParameter();
}

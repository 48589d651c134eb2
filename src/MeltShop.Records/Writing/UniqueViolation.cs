using System.Text.Json;
using MeltShop.Records.Databases;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Npgsql;

namespace MeltShop.Records.Writing;

/// <summary>Recognises what both databases say when a value that has to be unique is there already.</summary>
public static class UniqueViolation
{
    private const int SqliteUnique = 2067;
    private const int SqlitePrimaryKey = 1555;

    /// <summary>The index or columns that are taken, in the database's own words; null where the exception is about something else.</summary>
    public static string? TakenIn(DbUpdateException exception)
    {
        ArgumentNullException.ThrowIfNull(exception);
        return exception.InnerException switch
        {
            SqliteException { SqliteExtendedErrorCode: SqliteUnique or SqlitePrimaryKey } sqlite => Columns(sqlite.Message),
            PostgresException { SqlState: PostgresErrorCodes.UniqueViolation } postgres => postgres.ConstraintName ?? postgres.TableName ?? "",
            _ => null,
        };
    }

    /// <summary>The last property of the index that is taken, as a path: <c>code</c>.</summary>
    public static string Path(IModel model, string taken)
    {
        ArgumentNullException.ThrowIfNull(model);
        foreach (var index in model.GetEntityTypes().SelectMany(t => t.GetIndexes()).Where(i => i.IsUnique))
        {
            var table = index.DeclaringEntityType.GetTableName();
            var columns = string.Join(", ", index.Properties.Select(p => $"{table}.{p.GetColumnName()}"));
            if (taken == index.GetDatabaseName() || taken == columns) return JsonNamingPolicy.CamelCase.ConvertName(index.Properties[^1].Name);
        }

        return OneOfEach.Path(taken) ?? "";
    }

    // "SQLite Error 19: 'UNIQUE constraint failed: Materials.Code'."
    private static string Columns(string message)
    {
        var start = message.LastIndexOf(": ", StringComparison.Ordinal) + 2;
        return message[start..].TrimEnd('.', '\'');
    }
}

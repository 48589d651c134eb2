using MeltShop.Records.Mapping;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Databases;

/// <summary>
/// The database itself refuses to change or delete facts and trail rows. Set after each migration and not in one, because a SQLite
/// migration that rebuilds a table drops its triggers.
/// </summary>
internal static class AppendOnlyTriggers
{
    private const string Refusal = "kept as written: correct it by a new row";

    public static async Task Apply(RecordsContext db, CancellationToken ct)
    {
        var tables = db.Model.GetEntityTypes().Where(t => AppendOnly.Includes(t.ClrType)).Select(t => t.GetTableName()!).Order(StringComparer.Ordinal);
        var statements = db.Database.IsSqlite() ? tables.Select(Sqlite) : tables.Select(Postgres).Prepend(PostgresFunction);
        await db.Database.ExecuteSqlRawAsync(string.Join('\n', statements), ct);
    }

    private static string Sqlite(string table) =>
        $"""
        CREATE TRIGGER IF NOT EXISTS "{table}_unchanged" BEFORE UPDATE ON "{table}" BEGIN SELECT RAISE(ABORT, '{Refusal}'); END;
        CREATE TRIGGER IF NOT EXISTS "{table}_undeleted" BEFORE DELETE ON "{table}" BEGIN SELECT RAISE(ABORT, '{Refusal}'); END;
        """;

    // Two programs that start together take their turns: the lock ends with the statements' transaction.
    private const string PostgresFunction =
        $"""
        SELECT pg_advisory_xact_lock(hashtext('MeltShop append-only triggers'));
        CREATE OR REPLACE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS
        'BEGIN RAISE EXCEPTION ''{Refusal}''; END';
        """;

    private static string Postgres(string table) =>
        $"""
        CREATE OR REPLACE TRIGGER "kept_as_written" BEFORE UPDATE OR DELETE OR TRUNCATE ON "{table}"
        FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
        """;
}

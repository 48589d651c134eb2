using MeltShop.Records.Keeping;
using MeltShop.Records.Mapping;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace MeltShop.Records.Databases;

/// <summary>
/// What roles that own nothing may do on PostgreSQL: read all, write states, add facts and rows of the trail, and change or delete neither.
/// Set after each migration, for every role that has been given anything, so that no default of the server undoes it.
/// </summary>
internal static class RoleRights
{
    public static async Task Apply(RecordsContext db, string? app, CancellationToken ct)
    {
        var statements = new List<string> { "SELECT pg_advisory_xact_lock(hashtext('MeltShop role rights'));" };
        if (app is not null) statements.Add(Everything(app));
        foreach (var table in db.Model.GetEntityTypes().Where(t => !t.IsOwned()).OrderBy(t => t.GetTableName(), StringComparer.Ordinal))
        {
            if (Only(table.ClrType) is { } rights) statements.Add(Limit(table.GetTableName()!, rights));
        }

        statements.Add(Limit("__EFMigrationsHistory", "SELECT"));
        await db.Database.ExecuteSqlRawAsync(string.Join('\n', statements), ct);
    }

    /// <summary>The role that serves pages, where it is another than the owner.</summary>
    public static string? AppOf(RecordsOptions options)
    {
        var app = new NpgsqlConnectionStringBuilder(options.ConnectionString).Username;
        var owner = options.OwnerConnection is null ? app : new NpgsqlConnectionStringBuilder(options.OwnerConnection).Username;
        return app == owner ? null : app;
    }

    private static string? Only(Type type) =>
        AppendOnly.Includes(type) ? "SELECT, INSERT"
        : type == typeof(TrailHead) ? "SELECT, UPDATE"
        : type == typeof(Entry) ? "SELECT, INSERT, UPDATE"
        : null;

    private static string Everything(string app)
    {
        var role = $"\"{app.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
        return $"""
            GRANT USAGE ON SCHEMA public TO {role};
            GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA public TO {role};
            GRANT USAGE, SELECT ON ALL SEQUENCES IN SCHEMA public TO {role};
            """;
    }

    private static string Limit(string table, string rights) =>
        $"""
        DO $do$ DECLARE holder text; BEGIN
            FOR holder IN SELECT DISTINCT CASE grantee WHEN 'PUBLIC' THEN grantee ELSE quote_ident(grantee) END FROM information_schema.role_table_grants
                WHERE table_schema = 'public' AND table_name = '{table}' AND grantee <> current_user
            LOOP
                EXECUTE format('REVOKE ALL ON %I FROM %s', '{table}', holder);
                EXECUTE format('GRANT {rights} ON %I TO %s', '{table}', holder);
            END LOOP;
        END $do$;
        """;
}

using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Databases;

/// <summary>How a context reaches its database: the same at start, in commands, in tests and at design time.</summary>
internal static class ContextOptions
{
    public static DbContextOptions<SqliteRecords> Sqlite(string connection) =>
        new DbContextOptionsBuilder<SqliteRecords>()
            .UseSqlite(connection, sqlite => sqlite.UseQuerySplittingBehavior(QuerySplittingBehavior.SplitQuery))
            .AddInterceptors(SqliteDurability.Instance)
            .Options;

    public static DbContextOptions<PostgresRecords> Postgres(string connection) =>
        new DbContextOptionsBuilder<PostgresRecords>()
            .UseNpgsql(connection, postgres => postgres.UseQuerySplittingBehavior(QuerySplittingBehavior.SplitQuery))
            .Options;
}

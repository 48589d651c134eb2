using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Databases;

/// <summary>Makes the context of the chosen database.</summary>
public sealed class ContextFactory : IDbContextFactory<RecordsContext>
{
    private readonly Func<RecordsContext> create;

    public ContextFactory(RecordsOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (options.Provider == RecordsProvider.Sqlite)
        {
            var sqlite = ContextOptions.Sqlite(options.ConnectionString);
            create = () => new SqliteRecords(sqlite);
        }
        else
        {
            var postgres = ContextOptions.Postgres(options.ConnectionString);
            create = () => new PostgresRecords(postgres);
        }
    }

    /// <inheritdoc/>
    public RecordsContext CreateDbContext() => create();
}

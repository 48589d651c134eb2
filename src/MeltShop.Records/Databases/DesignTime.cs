using Microsoft.EntityFrameworkCore.Design;

namespace MeltShop.Records.Databases;

/// <summary>Lets <c>dotnet ef</c> build the SQLite model; no file is opened.</summary>
public sealed class SqliteDesignTime : IDesignTimeDbContextFactory<SqliteRecords>
{
    /// <inheritdoc/>
    public SqliteRecords CreateDbContext(string[] args) => new(ContextOptions.Sqlite("Data Source=design.db"));
}

/// <summary>Lets <c>dotnet ef</c> build the PostgreSQL model; no server is reached.</summary>
public sealed class PostgresDesignTime : IDesignTimeDbContextFactory<PostgresRecords>
{
    /// <inheritdoc/>
    public PostgresRecords CreateDbContext(string[] args) => new(ContextOptions.Postgres("Host=localhost;Database=design"));
}

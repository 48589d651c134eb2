namespace MeltShop.Records;

public enum RecordsProvider
{
    Sqlite,
    Postgres,
}

/// <summary>Which database, and how it is reached.</summary>
public sealed record RecordsOptions
{
    public required RecordsProvider Provider { get; init; }
    public required string ConnectionString { get; init; }

    /// <summary>Connection of the role that owns the tables, for migrations; null where the app's own role does.</summary>
    public string? OwnerConnection { get; init; }
}

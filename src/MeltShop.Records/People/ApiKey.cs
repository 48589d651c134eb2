namespace MeltShop.Records.People;

/// <summary>Lets a machine in. Only the hash is kept: whoever reads the database cannot use what is in it.</summary>
public sealed class ApiKey
{
    public long Id { get; init; }
    public required string Name { get; init; }

    /// <summary>SHA-256 of the key, 64 lower-case hexadecimal digits; unique.</summary>
    public required string Hash { get; init; }

    /// <summary>True where it may read all that anybody recorded, with names; a machine that only measures has no need of that.</summary>
    public bool ReadsRecords { get; init; }

    public required DateTimeOffset CreatedAt { get; init; }
    public DateTimeOffset? RevokedAt { get; set; }
}

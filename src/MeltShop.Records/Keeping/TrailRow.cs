namespace MeltShop.Records.Keeping;

/// <summary>One transaction in the trail. The hash covers the stored bytes and the hash before it.</summary>
public sealed class TrailRow
{
    public required long Number { get; init; }
    public required Guid EntryKey { get; init; }
    public required string Operation { get; init; }
    public required long PersonId { get; init; }
    public required string PersonName { get; init; }
    public required string Station { get; init; }
    public required DateTimeOffset EnteredAt { get; init; }

    /// <summary>What was asked and what came of it, JSON kept as text: a JSON column type would reorder its keys.</summary>
    public required string Payload { get; init; }

    /// <summary>SHA-256 as 64 lower-case hexadecimal digits; 64 zeros before the first row.</summary>
    public required string PreviousHash { get; init; }

    public required string Hash { get; set; }
}

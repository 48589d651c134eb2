namespace MeltShop.Records.Keeping;

/// <summary>The end of the chain: the one row that every writing transaction locks, and locks last.</summary>
public sealed class TrailHead
{
    public const int OnlyId = 1;

    public int Id { get; init; } = OnlyId;
    public long Number { get; set; }
    public required string Hash { get; set; }
}

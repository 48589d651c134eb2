namespace MeltShop.Records.Keeping;

/// <summary>What somebody has typed and not yet handed in, seen by all who stand at the same subject.</summary>
public sealed class Draft : IVersioned
{
    public long Id { get; init; }

    /// <summary>What it belongs to, for example <c>heat/17/sample</c>.</summary>
    public required string Subject { get; init; }

    public required string Field { get; init; }
    public required string Text { get; set; }
    public required long PersonId { get; set; }
    public required DateTimeOffset ChangedAt { get; set; }
    public Guid Version { get; set; }
}

namespace MeltShop.Records.Keeping;

/// <summary>A command that was accepted: its second arrival finds this row and returns the first result.</summary>
public sealed class Entry
{
    /// <summary>Made by the client, unique for ever.</summary>
    public required Guid Key { get; init; }

    public required string Operation { get; init; }
    public required long PersonId { get; init; }
    public required DateTimeOffset EnteredAt { get; init; }

    /// <summary>The result as JSON, as it was returned.</summary>
    public required string Result { get; init; }
}

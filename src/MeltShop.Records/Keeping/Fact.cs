namespace MeltShop.Records.Keeping;

/// <summary>
/// Something that was observed and is never changed afterwards: a correction is a new fact that supersedes it, with a reason.
/// </summary>
public abstract class Fact
{
    public long Id { get; init; }

    /// <summary>The command that wrote it; several facts of one command share it.</summary>
    public required Guid EntryKey { get; init; }

    public required long PersonId { get; init; }

    /// <summary>When it happened, as the person or the instrument says; UTC, whole microseconds.</summary>
    public required DateTimeOffset ObservedAt { get; init; }

    /// <summary>When it reached the records; UTC, whole microseconds.</summary>
    public required DateTimeOffset EnteredAt { get; init; }

    /// <summary>The fact that this one corrects; it stays readable.</summary>
    public long? SupersedesId { get; init; }

    /// <summary>Why it was corrected or decided; required with <see cref="SupersedesId"/>, unless it only follows an entry that came late.</summary>
    public string? Reason { get; init; }
}

using MeltShop.Records.Keeping;

namespace MeltShop.Records.Reading;

/// <summary>Where a fact comes from: who, when, and whether it corrects or was corrected.</summary>
/// <param name="FactId">Its id within its kind.</param>
/// <param name="Person">Who recorded it.</param>
/// <param name="CorrectsId">The fact of the same kind that it corrects.</param>
/// <param name="IsCorrected">A later one stands in its place; it stays readable.</param>
/// <param name="CorrectedBy">The one that does.</param>
public sealed record Origin(
    long FactId, string Person, DateTimeOffset ObservedAt, DateTimeOffset EnteredAt, long? CorrectsId, string? Reason, bool IsCorrected,
    CorrectionNote? CorrectedBy = null)
{
    /// <summary>It had been entered by that time, and nobody had corrected it yet.</summary>
    public bool WasKnown(DateTimeOffset time) => EnteredAt <= time && !(CorrectedBy?.EnteredAt <= time);

    /// <summary>The heat that it stood on before it was moved to this one.</summary>
    public HeatLink? MovedFrom { get; init; }

    /// <summary>The heat that its correction stands on, where that is another one.</summary>
    public HeatLink? MovedTo { get; init; }
}

/// <summary>A correction: the fact that stands in the place, who put it there, when it was entered, and why.</summary>
public sealed record CorrectionNote(long FactId, string Person, DateTimeOffset EnteredAt, string? Reason);

public sealed record HeatLink(long Id, string Number);

/// <summary>A fact as a query returns it, with what its origin needs.</summary>
internal sealed record FactRow<TFact>(
    TFact Fact, string Person, long? CorrectionId, DateTimeOffset? CorrectedAt, string? CorrectionReason, string? Corrector)
    where TFact : Fact
{
    public Origin Origin => new(
        Fact.Id, Person, Fact.ObservedAt, Fact.EnteredAt, Fact.SupersedesId, Fact.Reason, CorrectionId is not null,
        CorrectionId is { } id ? new(id, Corrector!, CorrectedAt!.Value, CorrectionReason) : null);
}

using MeltShop.Records.Keeping;

namespace MeltShop.Records.Reading;

/// <summary>Where a fact comes from: who, when, and whether it corrects or was corrected.</summary>
/// <param name="FactId">Its id within its kind.</param>
/// <param name="Person">Who recorded it.</param>
/// <param name="CorrectsId">The fact of the same kind that it corrects.</param>
/// <param name="IsCorrected">A later one stands in its place; it stays readable.</param>
public sealed record Origin(
    long FactId, string Person, DateTimeOffset ObservedAt, DateTimeOffset EnteredAt, long? CorrectsId, string? Reason, bool IsCorrected);

/// <summary>A fact as a query returns it, with what its origin needs.</summary>
internal sealed record FactRow<TFact>(TFact Fact, string Person, bool IsCorrected)
    where TFact : Fact
{
    public Origin Origin => new(Fact.Id, Person, Fact.ObservedAt, Fact.EnteredAt, Fact.SupersedesId, Fact.Reason, IsCorrected);
}

using MeltShop.Records.Writing;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Yard;

/// <summary>The facts of the yard, stamped.</summary>
internal static class YardFacts
{
    public static MaterialAnalysis Analysis(
        this Stamp stamp,
        long materialId,
        IReadOnlyList<MaterialPercentInput> percents,
        string source,
        string sourceKind,
        long? supersedesId = null,
        string? reason = null) => new()
        {
            EntryKey = stamp.EntryKey,
            PersonId = stamp.PersonId,
            ObservedAt = stamp.ObservedAt,
            EnteredAt = stamp.EnteredAt,
            SupersedesId = supersedesId,
            Reason = reason,
            MaterialId = materialId,
            Source = source,
            SourceKind = sourceKind,
            Percents = MaterialPercentInputs.Rows(percents),
        };

    public static PriceFact Price(this Stamp stamp, long materialId, decimal pricePerTonne) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        MaterialId = materialId,
        PricePerTonne = pricePerTonne,
    };
}

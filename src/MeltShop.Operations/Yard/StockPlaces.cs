using MeltShop.Records.Writing;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Yard;

/// <summary>Where a lot lies, as a fact.</summary>
internal static class StockPlaces
{
    /// <summary>Letters of a bin's name: what goes on one line of a card.</summary>
    public const int LongestBin = 30;

    /// <summary>A name without blanks around it; null where nothing is said.</summary>
    public static string? Named(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    public static LotPlace Place(this Stamp stamp, long materialId, string? lot, string? bin) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        MaterialId = materialId,
        Lot = lot,
        Bin = bin,
    };
}

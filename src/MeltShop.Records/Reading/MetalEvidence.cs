using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;

namespace MeltShop.Records.Reading;

/// <summary>What the furnace's ledger of a heat said when something was made from it.</summary>
/// <param name="Lines">All lines, those that were corrected too.</param>
internal sealed record MetalEvidence(IReadOnlyList<MetalView> Lines)
{
    /// <summary>Iron that was poured back.</summary>
    public IEnumerable<Origin> PouredBack => Lines.Where(line => line.Kind is FurnaceMetalKind.PouredBack).Select(line => line.Origin);

    /// <summary>
    /// A dip after this time said what the furnace held, whatever went before. (Its line is written anew for a weight that comes in from before it, and it said the level all the same.)
    /// </summary>
    public bool IsDippedAfter(DateTimeOffset time, DateTimeOffset madeAt) =>
        Lines.Any(line => line.Kind is FurnaceMetalKind.Dipped && line.Origin.ObservedAt > time && line.Origin.WasKnown(madeAt));

    /// <summary>
    /// What became of the dips, pig-outs and pour-backs that were known then, where they said the mass of the bath, or what was mixed into it after its sample. What was charged or
    /// tapped is corrected where it was weighed.
    /// </summary>
    public IEnumerable<StaleNote> Corrected(DateTimeOffset sampledAt, DateTimeOffset madeAt) =>
    [
        .. Lines.Where(line => line.Kind is not (FurnaceMetalKind.Charged or FurnaceMetalKind.Tapped) && line.Origin.WasKnown(madeAt))
            .Where(line => (line.Kind is FurnaceMetalKind.PouredBack && line.Origin.ObservedAt > sampledAt) || !IsDippedAfter(line.Origin.ObservedAt, madeAt))
            .Select(Changed).OfType<Origin>().Select(changed => Evidence.Note(StaleKind.Metal, changed)),
    ];

    /// <summary>The line at which what it says was changed; null where it stands, or was written anew as it was.</summary>
    private Origin? Changed(MetalView said)
    {
        var line = said;
        while (Lines.FirstOrDefault(later => later.Origin.FactId == line.Origin.CorrectedBy?.FactId) is { } now)
        {
            if (!IsSame(said, now)) return line.Origin;
            line = now;
        }

        return null;
    }

    private static bool IsSame(MetalView one, MetalView other) =>
        one.Origin.ObservedAt == other.Origin.ObservedAt && (one.Kind is FurnaceMetalKind.Dipped ? one.LevelKg == other.LevelKg : one.Kg == other.Kg);
}

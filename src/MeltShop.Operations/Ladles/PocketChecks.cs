using MeltShop.Records.Grades;

namespace MeltShop.Operations.Ladles;

/// <summary>What has to be looked at before a ladle is tapped. A tick unlocks the record of the card, never the iron.</summary>
public static class PocketChecks
{
    /// <summary>Dry, hot, pocket empty and free of skull and slag, no unshielded hoist, freeboard, and a second pair of eyes.</summary>
    private static readonly IReadOnlyList<string> Ductile = ["Pocket", "Ladle", "Alloy", "Hoist", "Second"];

    /// <summary>Grey iron has no pocket; its chill wedge is looked at instead.</summary>
    private static readonly IReadOnlyList<string> Grey = ["Ladle", "Alloy", "Wedge", "Second"];

    public static IReadOnlyList<string> For(IronFamily family) => family == IronFamily.Grey ? Grey : Ductile;
}

using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Residual magnesium that is printed for a purpose: a published example, no law. The customer's window goes before it.</summary>
/// <param name="Purpose">Key of the purpose.</param>
/// <param name="LeastPercent">Least, %.</param>
/// <param name="MostPercent">Most, %; null where only a least is printed.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record MagnesiumWindow(string Purpose, double LeastPercent, double? MostPercent, Source Source)
{
    /// <summary>The windows.</summary>
    public static IReadOnlyList<MagnesiumWindow> All { get; } =
    [
        new("ductile-casting", 0.035, 0.055, Bibliography.MagnesiumInCastings),
        new("ready-to-pour", 0.04, 0.06, Bibliography.MagnesiumTreatment),
        new("practical-floor", 0.025, null, Bibliography.MagnesiumResidual),
        new("compacted-graphite", 0.006, 0.016, Bibliography.MagnesiumResidual),
        new("one-foundry-ductile", 0.035, 0.06, Bibliography.FoundryData),
    ];
}

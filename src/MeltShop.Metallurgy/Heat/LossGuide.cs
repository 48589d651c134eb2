using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Heat;

/// <summary>Customary loss of one step between furnace and mould, from memory: a first entry for a budget, to be replaced by own readings.</summary>
/// <param name="Step">Key of the step, as in <see cref="HeatLossTerm.Name"/>.</param>
/// <param name="LeastK">Least loss, K.</param>
/// <param name="MostK">Most loss, K.</param>
public sealed record LossGuide(string Step, double LeastK, double MostK)
{
    /// <summary>Where the ranges come from. No printed table by treatment process was found.</summary>
    public static Source Source => Bibliography.LossPractice;

    /// <summary>The steps. A treatment's loss holds its transfer.</summary>
    public static IReadOnlyList<LossGuide> All { get; } =
    [
        new("stream", 20, 50), new("transfer", 15, 30), new("treatment-sandwich", 40, 70), new("treatment-tundish-cover", 30, 60),
        new("treatment-cored-wire", 25, 50), new("treatment-in-mould", 0, 0), new("inoculation-stream", 5, 10), new("first-fill-cold", 50, 100),
    ];
}

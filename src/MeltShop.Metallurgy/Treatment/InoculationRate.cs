using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Published rates of inoculation by place.</summary>
/// <param name="Place">Key of the place.</param>
/// <param name="LeastPercent">Least rate, % of the iron.</param>
/// <param name="MostPercent">Most rate, % of the iron.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record InoculationRate(string Place, double LeastPercent, double MostPercent, Source Source)
{
    /// <summary>The rates. Processes with pure magnesium need more than those with an alloy; ductile iron 1.5 to 2.5 times what grey iron needs.</summary>
    public static IReadOnlyList<InoculationRate> All { get; } =
    [
        new("ladle-grey", 0.2, 0.2, Bibliography.Elkem4),
        new("ladle-ductile", 0.3, 0.75, Bibliography.Elkem4),
        new("late-stream", 0.05, 0.20, Bibliography.InoculationPractice),
        new("in-mould", 0.05, 0.15, Bibliography.InoculationPractice),
    ];
}

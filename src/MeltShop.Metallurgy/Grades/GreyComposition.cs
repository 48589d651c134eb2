using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Grades;

/// <summary>Composition that goes with an automotive grey grade: a published example. Carbon equivalent is a range of its own, narrower than C and Si make it.</summary>
/// <param name="Grade">Grade.</param>
/// <param name="Carbon">Least and most C, %.</param>
/// <param name="Silicon">Least and most Si, %.</param>
/// <param name="Manganese">Least and most Mn, %.</param>
/// <param name="PhosphorusMost">Most P, %.</param>
/// <param name="CarbonEquivalent">Least and most CE, %.</param>
public sealed record GreyComposition(
    string Grade, (double Least, double Most) Carbon, (double Least, double Most) Silicon, (double Least, double Most) Manganese, double PhosphorusMost,
    (double Least, double Most) CarbonEquivalent)
{
    /// <summary>Most sulphur of all four, %.</summary>
    public const double SulphurMost = 0.15;

    /// <summary>Where the table comes from.</summary>
    public static Source Source => Bibliography.AstmA159;

    /// <summary>The grades.</summary>
    public static IReadOnlyList<GreyComposition> All { get; } =
    [
        new("G1800", (3.40, 3.70), (2.30, 2.80), (0.50, 0.80), 0.25, (4.25, 4.50)),
        new("G2500", (3.20, 3.50), (2.00, 2.40), (0.60, 0.90), 0.20, (4.00, 4.25)),
        new("G3000", (3.10, 3.40), (1.90, 2.30), (0.60, 0.90), 0.15, (3.90, 4.15)),
        new("G3500", (3.00, 3.30), (1.80, 2.20), (0.60, 0.90), 0.12, (3.70, 3.90)),
    ];
}

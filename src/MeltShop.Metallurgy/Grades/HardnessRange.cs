using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Grades;

/// <summary>Brinell hardness that goes with a grade; for guidance unless agreed.</summary>
/// <param name="Least">Least HBW; null where there is none.</param>
/// <param name="Most">Most HBW; null where there is none.</param>
/// <param name="Standing">Whether it was read or is remembered.</param>
public sealed record HardnessRange(double? Least, double? Most, Standing Standing);

using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Grades;

/// <summary>A published guide value for one element: where warnings start, no acceptance limit.</summary>
/// <param name="Element">The element.</param>
/// <param name="MostPercent">Most, %.</param>
/// <param name="Note">Where it applies.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record GuideLimit(Element Element, double MostPercent, string Note, Source Source);

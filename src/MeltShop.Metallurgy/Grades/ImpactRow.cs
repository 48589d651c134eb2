using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Grades;

/// <summary>Charpy V minima (10 × 10 mm bar, 2 mm notch) of a grade for one wall class.</summary>
/// <param name="TemperatureC">Test temperature, °C.</param>
/// <param name="OverMm">Wall over this, mm.</param>
/// <param name="UpToMm">Wall up to this, mm.</param>
/// <param name="MeanJ">Mean of three, J.</param>
/// <param name="SingleJ">Least single value, J; null where the standard has none.</param>
/// <param name="Standing">Whether the row was read or is remembered.</param>
public sealed record ImpactRow(double TemperatureC, double? OverMm, double? UpToMm, double MeanJ, double? SingleJ, Standing Standing);

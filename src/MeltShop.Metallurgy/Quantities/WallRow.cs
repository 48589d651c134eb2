namespace MeltShop.Metallurgy.Quantities;

/// <summary>Carbon and silicon that a published table advises for a range of walls.</summary>
/// <param name="FromMm">Thinnest wall, mm.</param>
/// <param name="ToMm">Thickest wall, mm.</param>
/// <param name="CarbonPercent">C, %.</param>
/// <param name="SiliconPercent">Si of the poured iron, %.</param>
/// <param name="PrintedCarbonEquivalent">C + Si/3 as printed; null where the print has none.</param>
public sealed record WallRow(double FromMm, double ToMm, double CarbonPercent, double SiliconPercent, double? PrintedCarbonEquivalent = null);

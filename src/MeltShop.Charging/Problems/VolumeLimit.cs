namespace MeltShop.Charging.Problems;

/// <summary>
/// Room for the cold charge: a furnace, a bucket times its fillings. A material takes its mass over its bulk density; one whose
/// bulk density is not known is not counted, and the plan names it.
/// </summary>
/// <param name="Name">What has the room; unique in the problem.</param>
/// <param name="MostM3">The room, m³, above 0.</param>
public sealed record VolumeLimit(string Name, double MostM3);

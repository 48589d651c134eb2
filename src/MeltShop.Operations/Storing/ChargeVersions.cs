namespace MeltShop.Operations.Storing;

/// <summary>What made a stored charge plan.</summary>
/// <param name="Program">Version of the program.</param>
/// <param name="CarbonEquivalent">Which form of it was used, by its key.</param>
/// <param name="Analyses">The analyses of materials that it used.</param>
public sealed record ChargeVersions(string Program, string CarbonEquivalent, IReadOnlyList<long> Analyses);

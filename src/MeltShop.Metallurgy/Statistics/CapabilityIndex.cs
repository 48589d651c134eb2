namespace MeltShop.Metallurgy.Statistics;

/// <summary>A capability index with its 95 % interval: from 20 heats it is known to about a third only.</summary>
/// <param name="Value">The index.</param>
/// <param name="Lower">Lower end of the interval.</param>
/// <param name="Upper">Upper end of the interval.</param>
public sealed record CapabilityIndex(double Value, double Lower, double Upper);

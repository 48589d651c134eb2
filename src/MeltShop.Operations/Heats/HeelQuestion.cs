using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Heats;

namespace MeltShop.Operations.Heats;

/// <summary>A change of the metal in the furnace.</summary>
/// <param name="At">When it happened.</param>
/// <param name="Kind">What happened.</param>
/// <param name="Kg">Change of the liquid mass, kg.</param>
/// <param name="Weighed">For what was charged or added: what it was, and the weighed kilograms.</param>
/// <param name="PouredBack">For what was poured back: its analysis.</param>
public sealed record MetalChange(
    DateTimeOffset At, FurnaceMetalKind Kind, double Kg, (MaterialComposition Composition, double Kg)? Weighed = null, Analysis? PouredBack = null);

/// <summary>Iron that was poured back, as it was known.</summary>
internal static class PouredBackIron
{
    public static Analysis Analysis(this FurnaceMetal line) =>
        Metallurgy.Elements.Analysis.Of(line.Percents.Select(p => KeyValuePair.Create(p.Element, p.Percent)));
}

/// <summary>The question "what is in the furnace, and with which analysis?".</summary>
public static class HeelQuestion
{
    /// <summary>
    /// The metal now: as it was sampled, then through all that happened since. What was added counts for the elements that the sample
    /// measured; of an element that it did not measure nothing is known afterwards either.
    /// </summary>
    /// <param name="sampledKg">Liquid in the furnace when the coin was taken, kg, by the ledger.</param>
    /// <param name="mean">Mean over the burns that count.</param>
    /// <param name="since">What changed after the coin was taken, in any order.</param>
    /// <returns>No metal where the ledger stands at or under zero.</returns>
    public static Metal Build(double sampledKg, Analysis mean, IEnumerable<MetalChange> since)
    {
        var metal = Metal.Of(Math.Max(0, sampledKg), mean);
        foreach (var change in since.OrderBy(c => c.At)) metal = After(metal, change, mean);

        return Metal.Of(metal.Kg, Measured(metal.Kg > 0 ? metal.Analysis : mean, mean));
    }

    private static Metal After(Metal metal, MetalChange change, Analysis mean)
    {
        if (change.Weighed is { } weighed) return metal.Plus(Arrival.PerKilogram(weighed.Composition), weighed.Kg);
        if (change.PouredBack is { } analysis) return metal.Plus(Metal.Of(change.Kg, analysis));
        if (change.Kg < 0) return metal.Less(Math.Min(metal.Kg, -change.Kg));
        return Metal.Of(metal.Kg + change.Kg, metal.Kg > 0 ? metal.Analysis : mean);
    }

    private static Analysis Measured(Analysis analysis, Analysis mean) => Analysis.Of(analysis.Where(p => mean.Has(p.Key)));
}

using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Laboratory;

/// <summary>The means of a sample over the burns that count.</summary>
/// <remarks>
/// A reading below detection counts as its limit of detection: against a most that is on the safe side, and a least is never set
/// where an instrument sees nothing.
/// </remarks>
public static class SampleMeans
{
    /// <summary>Mean of every element that at least one burn holds; empty where all burns are set aside.</summary>
    public static List<SampleMean> Of(IEnumerable<Burn> burns)
    {
        var counting = burns.Where(b => !b.SetAside).OrderBy(b => b.Ordinal).Select(Analysis).ToList();
        return [.. ReplicateBurns.Evaluate(counting).Select(e => new SampleMean { Element = e.Element, Percent = e.Mean, Count = e.Count })];
    }

    /// <summary>A burn as an analysis.</summary>
    public static Analysis Analysis(this Burn burn) =>
        Metallurgy.Elements.Analysis.Of(burn.Readings.Select(r => KeyValuePair.Create(r.Element, r.Percent)));

    /// <summary>Brings the kept means to what they are now, row by row.</summary>
    /// <returns>Those of elements that no burn shows any more: to be deleted.</returns>
    internal static List<SampleMean> Update(List<SampleMean> kept, IReadOnlyCollection<SampleMean> now)
    {
        foreach (var mean in now)
        {
            if (kept.SingleOrDefault(k => k.Element == mean.Element) is { } row) (row.Percent, row.Count) = (mean.Percent, mean.Count);
            else kept.Add(mean);
        }

        return kept.FindAll(k => now.All(n => n.Element != k.Element));
    }
}

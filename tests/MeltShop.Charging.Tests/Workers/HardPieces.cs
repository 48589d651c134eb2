using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Workers;

/// <summary>
/// Lots that are taken whole or not at all and have to make exact analyses: a market split, made for branch and bound to find no end. Source: G. Cornuéjols,
/// M. Dawande, "A Class of Hard Small 0–1 Programs", INFORMS Journal on Computing 11 (1999) 205–210.
/// </summary>
internal static class HardPieces
{
    private static readonly Element[] Elements = [Element.C, Element.Si, Element.Mn, Element.Cr];

    public static ChargeProblem Problem(int lots = 40)
    {
        var random = new Random(7);
        var analyses = Enumerable.Range(0, lots).Select(_ => Elements.Select(_ => (double)random.Next(0, 24)).ToArray()).ToArray();
        return new()
        {
            MeltKg = lots / 2,
            Materials = [.. analyses.Select((a, i) => Material($"lot {i + 1}", 300 + i, [.. Elements.Zip(a)]) with { PieceKg = 1, MaxKg = 1 })],
            Limits = [.. Elements.Select((e, k) => Exactly(e, Math.Round(analyses.Sum(a => a[k]) / 2) / (lots / 2)))],
        };
    }

    private static QuantityLimit Exactly(Element element, double percent) => Limit(element, percent, percent);
}

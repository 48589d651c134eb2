using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Operations.Laboratory;

/// <summary>The carbon that a cup tells, mass percent; null where it tells none.</summary>
internal static class CupCarbon
{
    /// <summary>From the two arrests of a cup that froze white.</summary>
    public static double? White(double? whiteEutecticC, double? liquidusC) =>
        whiteEutecticC is { } eutectic && liquidusC is { } liquidus ? WhiteCup.CarbonPercent(eutectic, liquidus) : null;

    /// <summary>CEL of the cup less the shares of silicon and phosphorus; above the eutectic the first arrest is graphite's, and says nothing here.</summary>
    /// <param name="coin">What a coin of the same iron says of its silicon and phosphorus.</param>
    public static double? FromLiquidus(double? liquidusC, Analysis coin)
    {
        if (liquidusC is not { } liquidus || !coin.Has(Element.Si) || !coin.Has(Element.P)) return null;
        var equivalent = LiquidusCalibration.Printed.CarbonEquivalentPercent(liquidus);
        if (equivalent > Liquidus.MaximumCarbonEquivalent) return null;
        return equivalent - Liquidus.CarbonEquivalent.Value(coin.With(Element.C, 0));
    }
}

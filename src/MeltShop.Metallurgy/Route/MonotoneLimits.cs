using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Route;

/// <summary>Limits on quantities that are not linear but rise or fall with one that is: turned into rows.</summary>
public static class MonotoneLimits
{
    /// <summary>Ferrite share as a row on the pearlite factor: at least 90 % ferrite is a factor of at most 2.368.</summary>
    /// <param name="ferritePercent">Bounds on ferrite, %, over 0 up to 100. At most 100 is no limit, as is at least 0.</param>
    public static QuantityBounds Ferrite(Bounds ferritePercent)
    {
        ArgumentNullException.ThrowIfNull(ferritePercent);
        return new(PearliteFactor.Quantity, new(
            Least: ferritePercent.Most is { } most && most < 100 ? PearliteFactor.ForFerrite(most) : null,
            Aim: ferritePercent.Aim is { } aim ? PearliteFactor.ForFerrite(aim) : null,
            Most: ferritePercent.Least is > 0 and var least ? PearliteFactor.ForFerrite(least) : null));
    }

    /// <summary>Liquidus temperature as a row on the liquidus carbon equivalent.</summary>
    /// <param name="liquidusC">Bounds on the liquidus, °C.</param>
    /// <param name="line">The shop's line; the printed one where null.</param>
    public static QuantityBounds LiquidusTemperature(Bounds liquidusC, LiquidusCalibration? line = null)
    {
        ArgumentNullException.ThrowIfNull(liquidusC);
        var used = line ?? LiquidusCalibration.Printed;
        return new(Liquidus.CarbonEquivalent, liquidusC.Scaled(-1 / used.SlopeCPerPercent, used.InterceptC / used.SlopeCPerPercent));
    }

    /// <summary>One bound of the degree of saturation as a row: Sc ≤ s is C + s·(Si + P)/3 ≤ 4.26·s, and so for least.</summary>
    /// <param name="least">Least saturation; null where there is none.</param>
    /// <param name="most">Most saturation; null where there is none.</param>
    public static IEnumerable<QuantityBounds> DegreeOfSaturation(double? least, double? most)
    {
        if (least is { } from) yield return new(At(from), new(Least: 0));
        if (most is { } to) yield return new(At(to), new(Most: 0));
    }

    private static LinearQuantity At(double saturation) => new(
        "Sc",
        new Dictionary<Element, double> { [Element.C] = 1, [Element.Si] = saturation / 3, [Element.P] = saturation / 3 },
        -Saturation.EutecticCarbonPercent * saturation);
}

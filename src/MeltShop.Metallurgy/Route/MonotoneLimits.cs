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

    /// <summary>
    /// Bounds of the degree of saturation as rows: Sc ≤ s is C + s·(Si + P)/3 ≤ 4.26·s, and so for least. Each is divided by a usual eutectic carbon and
    /// moved, so that its value is s on the bound and near the degree beside it.
    /// </summary>
    /// <param name="least">Least saturation; null where there is none.</param>
    /// <param name="most">Most saturation; null where there is none.</param>
    public static IEnumerable<QuantityBounds> DegreeOfSaturation(double? least, double? most)
    {
        if (least is { } from) yield return new(At(from, 1.0 / 3, 1.0 / 3), new(Least: from));
        if (most is { } to) yield return new(At(to, 1.0 / 3, 1.0 / 3), new(Most: to));
    }

    /// <summary>Bounds of the normal strength of grey iron as rows on the degree of saturation by the longer form, likewise.</summary>
    /// <param name="strengthMPa">Bounds on the strength, MPa.</param>
    public static IEnumerable<QuantityBounds> NormalStrength(Bounds strengthMPa)
    {
        ArgumentNullException.ThrowIfNull(strengthMPa);
        if (strengthMPa.Least is { } from) yield return new(Strength(from), new(Least: from));
        if (strengthMPa.Most is { } to) yield return new(Strength(to), new(Most: to));
    }

    // Strength falls with saturation in a straight line, 785 MPa for 1.
    private static LinearQuantity Strength(double strengthMPa)
    {
        var (zero, slope) = (GreyStrength.NormalMPa(0), GreyStrength.NormalMPa(1) - GreyStrength.NormalMPa(0));
        var degree = At((strengthMPa - zero) / slope, 0.31, 0.27);
        return new("normalStrengthMPa", degree.Terms.ToDictionary(t => t.Key, t => slope * t.Value), zero + (slope * degree.Constant));
    }

    private static LinearQuantity At(double saturation, double silicon, double phosphorus) => new(
        "Sc",
        new Dictionary<Element, double>
        {
            [Element.C] = 1 / UsualEutecticPercent,
            [Element.Si] = silicon * saturation / UsualEutecticPercent,
            [Element.P] = phosphorus * saturation / UsualEutecticPercent,
        },
        saturation - (Saturation.EutecticCarbonPercent * saturation / UsualEutecticPercent));

    /// <summary>Eutectic carbon of an iron with 2.1 % silicon, %: a scale for reading, on which no bound depends.</summary>
    private const double UsualEutecticPercent = 3.56;
}

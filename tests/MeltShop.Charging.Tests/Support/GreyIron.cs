using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Support;

/// <summary>A yard for grey iron, of our own invention; prices per kg × 1000.</summary>
internal static class GreyIron
{
    public static readonly ChargeMaterial[] Yard =
    [
        Of("pig", 480, 400, 98.5, [4.2, 1.8, .5, .06, .03, .02], [98, 97, 95, 100, 100, 100], [.10, .15, .05, .01, .005, .01]),
        Of("steel", 320, 600, 97, [.1, .15, .6, .02, .02, .15], [95, 95, 95, 100, 100, 100], [.03, .05, .15, .005, .005, .06]),
        Of("returns", 250, 500, 97.5, [3.35, 1.95, .65, .05, .08, .2], [98, 97, 95, 100, 100, 100], [.08, .10, .05, .01, .015, .05]),
        Of("ferrosilicon", 1600, 60, 100, [.1, 75, .3, .03, .01, 0], [90, 93, 90, 100, 100, 100], [0, 1, 0, 0, 0, 0]),
        Of("carburiser", 900, 60, 100, [98.5, 0, 0, 0, .05, 0], [88, 100, 100, 100, 100, 100], [1, 0, 0, 0, 0, 0]),
        Of("ferromanganese", 1400, 30, 100, [6.8, 1, 75, .2, .03, 0], [90, 90, 92, 100, 100, 100], [0, 0, 1, 0, 0, 0]),
        Of("iron sulphide", 800, 10, 100, [0, 0, 0, 0, 30, 0], [100, 100, 100, 100, 85, 100], [0, 0, 0, 0, 1, 0]),
    ];

    public static ChargeProblem Problem(double confidence, params QuantityLimit[] limits) => new()
    {
        MeltKg = 1000,
        Materials = Yard,
        Limits = [.. limits, Limit(Element.P, null, 0.08), Limit(Element.S, 0.06, 0.1), Limit(Element.Cu, null, 0.25)],
        ConfidencePercent = confidence,
    };

    private static ChargeMaterial Of(string code, double price, double mostKg, double yield, double[] percent, double[] recovery, double[] spread) =>
        Material(code, price, Pairs(percent)).Yielding(yield, Pairs(recovery)).Scattering(Pairs(spread)) with { MaxKg = mostKg };

    private static (Element Element, double Percent)[] Pairs(double[] values) =>
        [.. new[] { Element.C, Element.Si, Element.Mn, Element.P, Element.S, Element.Cu }.Zip(values)];
}

using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Charging.Tests.Support;

/// <summary>Short ways to write problems in tests.</summary>
internal static class Case
{
    public static ChargeMaterial Material(string code, double pricePerTonne, params (Element Element, double Percent)[] analysis) => new()
    {
        Code = code,
        PricePerTonne = pricePerTonne,
        Composition = new MaterialComposition { Analysis = Analysis.Of(analysis) },
    };

    public static ChargeMaterial Yielding(this ChargeMaterial material, double yieldPercent, params (Element Element, double Percent)[] recovery) => material with
    {
        Composition = material.Composition with
        {
            MetallicYieldPercent = yieldPercent,
            RecoveryPercent = recovery.ToDictionary(r => r.Element, r => r.Percent),
        },
    };

    public static ChargeMaterial Scattering(this ChargeMaterial material, params (Element Element, double Percent)[] spread) =>
        material with { SpreadPercent = spread.ToDictionary(s => s.Element, s => s.Percent) };

    public static QuantityLimit Limit(Element element, double? min, double? max, double margin = 0) =>
        new(LinearQuantity.Of(element), min, max, margin);

    public static QuantityLimit Limit(string name, double? min, double? max, params (Element Element, double Factor)[] terms) =>
        new(new LinearQuantity(name, terms.ToDictionary(t => t.Element, t => t.Factor)), min, max);
}

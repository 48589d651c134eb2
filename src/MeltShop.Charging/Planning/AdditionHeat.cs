using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Charging.Planning;

/// <summary>How far additions cool the bath with the power off.</summary>
internal static class AdditionHeat
{
    /// <summary>Heat content of liquid iron, kWh per tonne and kelvin (common practice for cast iron, no source).</summary>
    private const double BathKWhPerTonneKelvin = 0.23;

    /// <summary>Carbon and silicon from which a material is no longer iron or steel but an alloy or a carburiser, %.</summary>
    private const double AlloyPercent = 10;

    /// <summary>
    /// Heat to bring a tonne into solution, kWh; null where it is not given and the material is neither iron nor steel. Cold steel takes
    /// 341 kWh/t to 1450 °C (derived from heat contents of iron) and the bath's own heat content for each further kelvin.
    /// </summary>
    public static double? KWhPerTonne(ChargeMaterial addition, double temperatureC)
    {
        var analysis = addition.Composition.Analysis;
        return addition.HeatKWhPerTonne
            ?? (analysis.OrZero(Element.C) + analysis.OrZero(Element.Si) < AlloyPercent
                ? 341 + BathKWhPerTonneKelvin * (temperatureC - 1450)
                : null);
    }

    /// <summary>Σ m·h over the heat content of bath and additions; positive = cooler. 24.3 K for 50 kg of steel (341 kWh/t) in 3 t.</summary>
    public static double TemperatureDropC(double bathKg, IEnumerable<(double Kg, double KWhPerTonne)> additions)
    {
        var list = additions.ToList();
        var mass = bathKg + list.Sum(a => a.Kg);
        return list.Count == 0 ? 0 : list.Sum(a => a.Kg * a.KWhPerTonne) / (BathKWhPerTonneKelvin * mass);
    }
}

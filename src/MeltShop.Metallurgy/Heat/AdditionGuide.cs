using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Heat;

/// <summary>Heats of cold additions where nobody has measured the shop's own; see <see cref="AdditionHeat"/> for what they are used in.</summary>
public static class AdditionGuide
{
    private const double CarbonKWhPerTonne = 1180;
    private const double Ferrosilicon75KWhPerTonne = -160;

    /// <summary>The record of these first entries.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "addition-heat",
        Name = "Heat of an addition, first entry",
        Sentence = "The heat that brings a cold addition into solution, where the shop has not measured its own.",
        Expression = "h = 341 + 0.23 (T − 1450) of iron and steel; 1180 of carburisers; −160 Si / 75 of ferrosilicon",
        Symbols = [new("T", "bath temperature", "°C"), new("Si", "silicon of the addition", "%")],
        Unit = "kWh/t, negative where it heats the bath",
        Sources = [Bibliography.Thermochemistry],
        Range = "Carburisers of 90 % carbon or more, ferrosilicon of 40 % silicon or more, plain iron and steel; none for anything else.",
        Doubt = "From heats of solution, from memory: the sign is sure, the size ± 50 %. Measure the bath before and after, and enter your own.",
        Code = $"{nameof(AdditionGuide)}.{nameof(KWhPerTonne)}",
        Example = new("ferrosilicon of 45 % silicon → −96 kWh/t (by hand)", () => KWhPerTonne(Analysis.Of((Element.Si, 45)), 1450)!.Value, -96, 1e-9),
    };

    /// <summary>
    /// Heat to bring a material from cold into solution: the line of iron and steel; about 1180 for a carburiser of 90 % carbon or more;
    /// ferrosilicon of 40 % silicon or more gives about 160 at 75 %, in proportion (from memory: the sign is sure, the size ± 50 %).
    /// </summary>
    /// <param name="analysis">Analysis of the addition.</param>
    /// <param name="temperatureC">Bath temperature, °C.</param>
    /// <returns>kWh per tonne, negative where it heats the bath; null where no figure is at hand.</returns>
    public static double? KWhPerTonne(Analysis analysis, double temperatureC)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        if (AdditionHeat.SteelKWhPerTonne(analysis, temperatureC) is { } iron) return Alloyed(analysis) ? null : iron;
        if (analysis.OrZero(Element.C) >= 90) return CarbonKWhPerTonne;
        return analysis.OrZero(Element.Si) >= 40 && analysis.OrZero(Element.C) < 5 ? Ferrosilicon75KWhPerTonne * analysis.OrZero(Element.Si) / 75 : null;
    }

    // Ferro-manganese, copper and the like hold little carbon and silicon and are neither iron nor steel.
    private static bool Alloyed(Analysis analysis) =>
        analysis.Where(percent => percent.Key != Element.Fe && percent.Key != Element.C && percent.Key != Element.Si).Sum(percent => percent.Value)
            >= AdditionHeat.IronOrSteelBelowPercent;
}

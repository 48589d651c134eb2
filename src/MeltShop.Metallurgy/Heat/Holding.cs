using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Heat;

/// <summary>What a furnace that only holds loses.</summary>
public static class Holding
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "holding-loss",
        Name = "Cooling of a bath with the power off",
        Sentence = "How fast a bath cools by the heat its furnace loses.",
        Expression = "ΔT/h = 1000 P / (0.23 m)",
        Symbols = [new("P", "heat lost through wall, bottom and surface", "kW"), new("m", "bath", "kg")],
        Unit = "K/h",
        Sources = [Bibliography.HeatLosses],
        Range = "Bath of one temperature, lid closed.",
        Code = $"{nameof(Holding)}.{nameof(CoolingKPerHour)}",
        Example = new("13 t losing 175 kW → 58.5 K/h (loss printed, rate by hand)", () => CoolingKPerHour(175, 13_000), 58.5, 0.05),
    };

    /// <summary>Cooling of a bath that gets no power.</summary>
    /// <param name="lossKW">Heat lost, kW.</param>
    /// <param name="bathKg">Bath, kg, over 0.</param>
    public static double CoolingKPerHour(double lossKW, double bathKg) => lossKW / (HeatContent.KWhPerTonneKelvin * bathKg / 1000);
}

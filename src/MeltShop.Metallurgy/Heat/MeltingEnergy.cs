using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Heat;

/// <summary>Energy and minutes for a charge, and for heating a bath that is liquid already.</summary>
public static class MeltingEnergy
{
    /// <summary>Heat that a tonne of slag takes along, kWh (from memory, checked by heat capacity and heat of fusion).</summary>
    public const double SlagKWhPerTonne = 550;

    /// <summary>The record of the energy.</summary>
    public static Formula EnergyFormula { get; } = new()
    {
        Key = "melting-energy",
        Name = "Melting energy",
        Sentence = "Energy at the meter to bring a charge and its heel to a temperature.",
        Expression = "E = [m_c H(T) + m_h c (T − T_h) + m_s · 0.55] / η",
        Symbols =
        [
            new("m_c, m_h, m_s", "charge, heel, slag", "t"), new("H", "heat content", "kWh/t"), new("c", "0.23", "kWh/(t·K)"),
            new("T, T_h", "temperature wanted, of the heel", "°C"), new("η", "heat in the iron over energy at the meter", "1"),
        ],
        Unit = "kWh",
        Sources = [Bibliography.Doetsch, Bibliography.Thermochemistry],
        Range = "1250 to 1600 °C. η is 0.60 to 0.72 in practice; each furnace has its own, by temperature, wear and power.",
        Code = $"{nameof(MeltingEnergy)}.{nameof(EnergyKWh)}",
        Example = new("1 t to 1550 °C at η 71.6 % → 560 kWh (handbook: best practice 560)", () => EnergyKWh(1000, 1550, 71.6), 560, 0.5),
    };

    /// <summary>The record of the minutes.</summary>
    public static Formula MinutesFormula { get; } = new()
    {
        Key = "melting-minutes",
        Name = "Minutes at a power",
        Sentence = "How long a power needs for an energy.",
        Expression = "t = 60 E / P",
        Symbols = [new("E", "energy at the meter", "kWh"), new("P", "power", "kW")],
        Unit = "min",
        Sources = [Bibliography.MeltingTime],
        Range = "Full power all the time: charging, slagging and sampling come on top.",
        Code = $"{nameof(MeltingEnergy)}.{nameof(Minutes)}",
        Example = new("560 kWh at 500 kW → 67.2 min (printed)", () => Minutes(560, 500), 67.2, 0.05),
    };

    /// <summary>Energy at the meter to melt a charge onto a heel.</summary>
    /// <param name="chargeKg">Cold charge that melts in, kg.</param>
    /// <param name="temperatureC">Temperature wanted, °C.</param>
    /// <param name="efficiencyPercent">Heat in the iron over energy at the meter, %, over 0 to 100.</param>
    /// <param name="heelKg">Liquid heel, kg.</param>
    /// <param name="heelTemperatureC">Temperature of the heel, °C.</param>
    /// <param name="slagKg">Slag, kg.</param>
    public static double EnergyKWh(
        double chargeKg, double temperatureC, double efficiencyPercent, double heelKg = 0, double heelTemperatureC = 0, double slagKg = 0) =>
        (chargeKg * HeatContent.KWhPerTonne(temperatureC)
            + heelKg * HeatContent.KWhPerTonneKelvin * (temperatureC - heelTemperatureC)
            + slagKg * SlagKWhPerTonne) / 1000 / (efficiencyPercent / 100);

    /// <summary>Minutes for an energy at a power.</summary>
    /// <param name="energyKWh">Energy at the meter, kWh.</param>
    /// <param name="powerKW">Power, kW, over 0.</param>
    public static double Minutes(double energyKWh, double powerKW) => 60 * energyKWh / powerKW;
}

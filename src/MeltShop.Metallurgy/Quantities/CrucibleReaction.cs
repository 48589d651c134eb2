using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>SiO₂ + 2 [C] = [Si] + 2 CO in an acid-lined coreless furnace: which way a held bath drifts.</summary>
public static class CrucibleReaction
{
    /// <summary>The record of the equilibrium temperature.</summary>
    public static Formula EquilibriumFormula { get; } = new()
    {
        Key = "crucible-equilibrium",
        Name = "Equilibrium temperature of the crucible reaction",
        Sentence = "Below it silicon burns and silica forms; above it carbon reduces silica.",
        Expression = "T_G = 27486 / (15.47 − log₁₀(Si/C²)) − 273.15",
        Symbols = [new("C, Si", "analysis", "%")],
        Unit = "°C",
        Sources = [Bibliography.CrucibleLaw, Bibliography.Crucible],
        Range = "Acid lining, unalloyed furnace iron, C and Si over 0.",
        Doubt = "The constants are from memory. They reproduce the window 1400 to 1440 °C that the lexicon gives for C 3.5–4.0, Si 1.5–3.0 within 7 °C; "
            + "free energies give 2 to 4 °C more; with interaction coefficients the same route gives about 45 °C less.",
        Code = $"{nameof(CrucibleReaction)}.{nameof(EquilibriumC)}",
        Example = new("C 3.5, Si 2.0 → 1417.6 °C (by hand)", () => EquilibriumC(3.5, 2.0), 1417.6, 0.05),
    };

    /// <summary>The record of the boiling temperature.</summary>
    public static Formula BoilingFormula { get; } = new()
    {
        Key = "crucible-boiling",
        Name = "Boiling temperature of the crucible reaction",
        Sentence = "Above it the bath boils: carbon falls, silicon rises, the lining wears.",
        Expression = "T_K = 0.7866 T_G + 362",
        Symbols = [new("T_G", "equilibrium temperature", "°C")],
        Unit = "°C",
        Sources = [Bibliography.Crucible],
        Range = "Acid lining, unalloyed furnace iron.",
        Code = $"{nameof(CrucibleReaction)}.{nameof(BoilingC)}",
        Example = new("C 3.5, Si 2.0 → 1477.1 °C (by hand)", () => BoilingC(3.5, 2.0), 1477.1, 0.05),
    };

    /// <summary>The record of the drift.</summary>
    public static Formula DriftFormula { get; } = new()
    {
        Key = "crucible-drift",
        Name = "Silicon gained for carbon lost",
        Sentence = "What the crucible reaction gives for the carbon it takes.",
        Expression = "ΔSi = −ΔC · 28.085/(2 · 12.011)",
        Symbols = [new("ΔC", "change of carbon", "%")],
        Unit = "%",
        Sources = [Bibliography.Iupac],
        Range = "This reaction alone; burning by air is not in it.",
        Code = $"{nameof(CrucibleReaction)}.{nameof(SiliconChange)}",
        Example = new("C −0.05 → Si +0.058 (by hand)", () => SiliconChange(-0.05), 0.0585, 0.00005),
    };

    /// <summary>Equilibrium temperature.</summary>
    /// <param name="carbonPercent">C, %, over 0.</param>
    /// <param name="siliconPercent">Si, %, over 0.</param>
    /// <returns>°C; not a number where C or Si is 0.</returns>
    public static double EquilibriumC(double carbonPercent, double siliconPercent) =>
        carbonPercent > 0 && siliconPercent > 0
            ? 27486 / (15.47 - Math.Log10(siliconPercent / (carbonPercent * carbonPercent))) - 273.15
            : double.NaN;

    /// <summary>Boiling temperature.</summary>
    /// <param name="carbonPercent">C, %, over 0.</param>
    /// <param name="siliconPercent">Si, %, over 0.</param>
    /// <returns>°C; not a number where C or Si is 0.</returns>
    public static double BoilingC(double carbonPercent, double siliconPercent) => 0.7866 * EquilibriumC(carbonPercent, siliconPercent) + 362;

    /// <summary>Change of silicon that goes with a change of carbon.</summary>
    /// <param name="carbonChangePercent">Change of carbon, percentage points.</param>
    public static double SiliconChange(double carbonChangePercent) =>
        -carbonChangePercent * Element.Si.AtomicMass / (2 * Element.C.AtomicMass);

    /// <summary>Which way a held bath goes.</summary>
    /// <param name="carbonPercent">C, %, over 0.</param>
    /// <param name="siliconPercent">Si, %, over 0.</param>
    /// <param name="temperatureC">Bath temperature, °C.</param>
    public static HoldingDrift Drift(double carbonPercent, double siliconPercent, double temperatureC) =>
        temperatureC < EquilibriumC(carbonPercent, siliconPercent) ? HoldingDrift.SiliconBurns
            : temperatureC > BoilingC(carbonPercent, siliconPercent) ? HoldingDrift.CarbonBoils
            : HoldingDrift.Still;
}

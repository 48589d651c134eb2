using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>
/// The quantities beside those of <see cref="DerivedQuantities"/>, in the same form: each says which iron it speaks of, what it took as 0
/// and, where it has no value, why.
/// </summary>
public static class FurtherQuantities
{
    /// <summary>Saturation by the longer form below and above which the strength formulas were not found.</summary>
    private const double LeastSaturation = 0.7, MostSaturation = 1.0;

    /// <summary>Sc by the longer form, alloyed liquidus, eutectics, crucible reaction, free nitrogen, normal strength; solubility and maturity where asked for.</summary>
    /// <param name="analysis">Mass percents.</param>
    /// <param name="temperatureC">Bath temperature for the solubility of carbon, °C; null leaves it out.</param>
    /// <param name="tensileMPa">Tensile strength of the 30 mm bar for the maturity, MPa; null leaves it out.</param>
    public static IReadOnlyList<DerivedQuantity> Of(Analysis analysis, double? temperatureC = null, double? tensileMPa = null)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        var (carbon, silicon, phosphorus) = (analysis.OrZero(C), analysis.OrZero(Si), analysis.OrZero(P));
        var saturation = Saturation.LongDegree(carbon, silicon, phosphorus);
        List<DerivedQuantity> found =
        [
            Quantity("ScLong", Saturation.LongFormula, IronState.Any, saturation, [C, Si], [P]),
            Liquid(Quantity("alloyedLiquidusC", AlloyedLiquidus.Formula, IronState.Any, AlloyedLiquidus.Quantity.Value(analysis), [C, Si], [Mn, P, S, Ni, Cr])),
            Quantity("greyEutecticC", EutecticTemperature.GreyFormula, IronState.Any, EutecticTemperature.GreyC(silicon), [Si], []),
            Quantity("whiteEutecticC", EutecticTemperature.WhiteFormula, IronState.Any, EutecticTemperature.WhiteC(silicon), [Si], []),
            Quantity("crucibleEquilibriumC", CrucibleReaction.EquilibriumFormula, IronState.Furnace, CrucibleReaction.EquilibriumC(carbon, silicon), [C, Si], []),
            Quantity("crucibleBoilingC", CrucibleReaction.BoilingFormula, IronState.Furnace, CrucibleReaction.BoilingC(carbon, silicon), [C, Si], []),
            Quantity("freeNitrogen", Nitrogen.Formula, IronState.Any, Nitrogen.LeastFreePercent(analysis.OrZero(N), analysis.OrZero(Ti)), [N], [Ti]),
            Grey(Quantity("normalStrengthMPa", GreyStrength.NormalFormula, IronState.Poured, GreyStrength.NormalMPa(saturation), [C, Si], [P])),
        ];
        if (temperatureC is { } temperature)
        {
            found.Add(Quantity("carbonSolubility", CarbonSolubility.Formula, IronState.Furnace, CarbonSolubility.MostPercent(temperature, analysis), [Si], [Mn, P, S]));
        }

        if (tensileMPa is { } tensile)
        {
            found.Add(Grey(Quantity("maturityPercent", GreyStrength.MaturityFormula, IronState.Poured, GreyStrength.MaturityPercent(tensile, saturation), [C, Si], [P])));
        }

        return found;

        DerivedQuantity Quantity(string name, Formula formula, IronState iron, double value, Element[] needed, Element[] helpful)
        {
            var quantity = new DerivedQuantity(
                name, value, formula.Unit, formula.Expression, formula.Sources[0].ToString(), [.. helpful.Where(e => !analysis.Has(e))], Why: null, iron);
            var missing = needed.Where(e => !analysis.Has(e)).ToArray();
            return missing.Length > 0 ? None(quantity, "quantity.needs", string.Join(", ", missing.AsEnumerable()))
                : double.IsFinite(value) ? quantity
                : None(quantity, "quantity.outOfRange");
        }

        DerivedQuantity Liquid(DerivedQuantity quantity) =>
            Liquidus.CarbonEquivalent.Value(analysis) is var equivalent && quantity.Value is not null && equivalent > Liquidus.MaximumCarbonEquivalent
                ? None(quantity, "quantity.aboveEutectic", equivalent, Liquidus.MaximumCarbonEquivalent)
                : quantity;

        DerivedQuantity Grey(DerivedQuantity quantity) =>
            analysis[Mg] is { } magnesium && magnesium >= ManganeseBalance.MagnesiumTreatedPercent
                ? None(quantity, "quantity.magnesiumTreated", magnesium, ManganeseBalance.MagnesiumTreatedPercent)
                : quantity.Value is not null && saturation is < LeastSaturation or > MostSaturation ? None(quantity, "quantity.outOfRange")
                : quantity;
    }

    private static DerivedQuantity None(DerivedQuantity quantity, string code, params object[] arguments) =>
        quantity with { Value = null, AssumedZero = [], Why = new Finding(quantity.Name, code, arguments) };
}

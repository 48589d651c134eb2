using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>All derived quantities of one analysis, in the order of the calculation contract.</summary>
public static class DerivedQuantities
{
    /// <summary>The quantities that are linear in the percents, so that a plan can limit them; CE by the form given.</summary>
    /// <param name="form">Form of the carbon equivalent; the default where null.</param>
    public static IReadOnlyList<LinearQuantity> Linear(CarbonEquivalentForm? form = null) =>
    [
        (form ?? CarbonEquivalent.Default).Quantity, Liquidus.CarbonEquivalent, ManganeseBalance.Quantity, PearliteFactor.Quantity, TraceFactor.Quantity,
    ];

    /// <summary>CE, Sc, CEL, liquidusC, manganeseBalance, pearliteFactor, ferritePercent and traceFactor of an analysis.</summary>
    /// <param name="analysis">Mass percents; what was not measured is named in each answer that took it as 0.</param>
    /// <param name="form">Form of the carbon equivalent; the default where null. <see cref="CarbonEquivalent.Find"/> finds it by id.</param>
    public static IReadOnlyList<DerivedQuantity> Of(Analysis analysis, CarbonEquivalentForm? form = null)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return
        [
            Carbon(analysis, form ?? CarbonEquivalent.Default),
            Saturate(analysis),
            Linear(analysis, Liquidus.CarbonEquivalent, Liquidus.CarbonEquivalentFormula, IronState.Any, C, Si),
            Freeze(analysis),
            Manganese(analysis),
            Linear(analysis, PearliteFactor.Quantity, PearliteFactor.Formula, IronState.Poured, Mn, Si, Cu),
            Ferrite(analysis),
            Trace(analysis),
        ];
    }

    private static DerivedQuantity Carbon(Analysis analysis, CarbonEquivalentForm form) =>
        Linear(analysis, form.Quantity, CarbonEquivalent.Formula, IronState.Any, C, Si) with
        {
            Expression = $"{form.Id}: CE = {form.Expression}",
            Source = form.Source.ToString(),
        };

    private static DerivedQuantity Saturate(Analysis analysis)
    {
        var quantity = Linear(analysis, CarbonEquivalent.Default.Quantity, Saturation.Formula, IronState.Any, C, Si) with { Name = "Sc" };
        return quantity.Value is null ? quantity
            : Meant(quantity with { Value = Saturation.Degree(analysis.OrZero(C), analysis.OrZero(Si), analysis.OrZero(P)) });
    }

    private static DerivedQuantity Freeze(Analysis analysis)
    {
        var quantity = Linear(analysis, Liquidus.CarbonEquivalent, Liquidus.TemperatureFormula, IronState.Any, C, Si) with { Name = "liquidusC" };
        if (quantity.Value is not { } equivalent) return quantity;
        return equivalent > Liquidus.MaximumCarbonEquivalent
            ? None(quantity, "quantity.aboveEutectic", equivalent, Liquidus.MaximumCarbonEquivalent)
            : quantity with { Value = Liquidus.TemperatureC(equivalent) };
    }

    private static DerivedQuantity Manganese(Analysis analysis)
    {
        var quantity = Linear(analysis, ManganeseBalance.Quantity, ManganeseBalance.Formula, IronState.Any, Mn, S);
        return analysis[Mg] is { } magnesium && magnesium >= ManganeseBalance.MagnesiumTreatedPercent
            ? None(quantity, "quantity.magnesiumTreated", magnesium, ManganeseBalance.MagnesiumTreatedPercent)
            : quantity;
    }

    private static DerivedQuantity Ferrite(Analysis analysis)
    {
        var quantity = Linear(analysis, PearliteFactor.Quantity, PearliteFactor.FerriteFormula, IronState.Poured, Mn, Si, Cu) with { Name = "ferritePercent" };
        return quantity.Value is { } factor ? quantity with { Value = PearliteFactor.FerritePercent(factor) } : quantity;
    }

    private static DerivedQuantity Trace(Analysis analysis)
    {
        var quantity = Linear(analysis, TraceFactor.Quantity, TraceFactor.Formula, IronState.Poured);
        return TraceFactor.Quantity.Terms.Keys.Any(analysis.Has) ? quantity
            : None(quantity, "quantity.needsOneOf", Symbols(TraceFactor.Quantity.Terms.Keys.Order()));
    }

    private static DerivedQuantity Linear(Analysis analysis, LinearQuantity quantity, Formula formula, IronState iron, params Element[] needed)
    {
        var missing = needed.Where(e => !analysis.Has(e)).ToArray();
        var found = new DerivedQuantity(
            quantity.Name, quantity.Value(analysis), formula.Unit, formula.Expression, formula.Sources[0].ToString(),
            [.. quantity.AssumedZero(analysis)], Why: null, iron);
        return missing.Length == 0 ? Meant(found) : None(found, "quantity.needs", Symbols(missing));
    }

    private static string Symbols(IEnumerable<Element> elements) => string.Join(", ", elements);

    private static DerivedQuantity Meant(DerivedQuantity quantity) =>
        quantity.Value is { } value && double.IsFinite(value) ? quantity : None(quantity, "quantity.outOfRange");

    private static DerivedQuantity None(DerivedQuantity quantity, string code, params object[] arguments) =>
        quantity with { Value = null, AssumedZero = [], Why = new Finding(quantity.Name, code, arguments) };
}

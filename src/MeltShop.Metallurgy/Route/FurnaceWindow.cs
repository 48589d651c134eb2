using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Route;

/// <summary>The window of the furnace iron that a poured window and a route ask for.</summary>
/// <param name="Rows">
/// Rows on the furnace iron, in the order of the poured rows; sulphur comes last where the route treats. A least that the route alone
/// brings is null.
/// </param>
/// <param name="Findings">
/// What cannot be: <c>route.noAlloy</c> (no mass of the alloy reaches the magnesium), <c>route.tooMuch</c> (name, what the route
/// alone brings, most allowed), <c>route.sulphur</c> (sulphur left by the treatment lies outside its poured window).
/// </param>
public sealed record FurnaceWindow(IReadOnlyList<QuantityBounds> Rows, IReadOnlyList<Finding> Findings)
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "furnace-window",
        Name = "Furnace window from the poured window",
        Sentence = "What the furnace iron must hold so that the poured iron lies in its window after treatment and inoculation.",
        Expression = "x_furnace = T · x_poured − b",
        Symbols =
        [
            new("T", "poured iron per kilogram of furnace iron", "kg/kg"),
            new("b", "what cover, alloy and inoculants bring of the element, of the furnace iron", "%"),
        ],
        Unit = "%",
        Sources = [Bibliography.Balance],
        Range = "Furnace iron with the planned sulphur; with less, T changes by a few parts in 100 000.",
        Code = $"{nameof(FurnaceWindow)}.{nameof(For)}",
        Example = new("no treatment, 0.4 % of a 75 % ferrosilicon at 90 % recovery, poured Si 2.27 → furnace Si 2.0084 (by hand: 2.27 · 1.0037 − 0.27)",
            () => For(
                new(null, [new(new() { Analysis = Analysis.Of((Element.Si, 75)), RecoveryPercent = new Dictionary<Element, double> { [Element.Si] = 90 } }, 0.4)]),
                [new(LinearQuantity.Of(Element.Si), new(Aim: 2.27))]).Rows[0].Bounds.Aim!.Value,
            2.0084, 0.00005),
    };

    /// <summary>Turns poured rows into furnace rows. Magnesium is the treatment's affair and gives none.</summary>
    /// <param name="route">The way to the mould.</param>
    /// <param name="poured">Rows on the poured iron: elements and derived quantities.</param>
    public static FurnaceWindow For(PouringRoute route, IReadOnlyList<QuantityBounds> poured)
    {
        ArgumentNullException.ThrowIfNull(route);
        ArgumentNullException.ThrowIfNull(poured);

        // Linear in the furnace percents: one kilogram of bare iron through the route gives mass and what it brings.
        var bare = Metal.Of(1, route.Treatment is { } t ? Analysis.Of((Element.S, t.SulphurPercent)) : Analysis.Empty);
        if (route.Poured(bare) is not { } brought) return new([], [new Finding("treatment", "route.noAlloy")]);

        var rows = new List<QuantityBounds>();
        var findings = new List<Finding>();
        foreach (var row in poured)
        {
            var furnace = Turn(row, brought, treated: route.Treatment is not null);
            if (furnace.Quantity.Terms.Count == 0) Check(row, brought, findings);
            else
            {
                if (Nonnegative(furnace) && furnace.Bounds.Most < -Bounds.Tolerance)
                {
                    findings.Add(new Finding(row.Quantity.Name, "route.tooMuch", row.Quantity.Name, row.Quantity.Value(brought.Analysis), row.Bounds.Most!.Value));
                }

                rows.Add(furnace);
            }
        }

        if (route.Treatment is { } planned) rows.Add(new(LinearQuantity.Of(Element.S), new(Most: planned.SulphurPercent)));
        return new(rows, findings);
    }

    // An element keeps its own row, in percent of the furnace iron; a derived quantity keeps its bounds and changes its terms.
    private static QuantityBounds Turn(QuantityBounds row, Metal brought, bool treated)
    {
        var free = row.Quantity.Terms.Where(t => !treated || (t.Key != Element.Mg && t.Key != Element.S)).ToDictionary();
        if (free.Count == 1 && row.Quantity.Terms.Count == 1 && row.Quantity.Constant == 0 && free.Single() is var (element, factor) && factor == 1)
        {
            var bounds = row.Bounds.Scaled(brought.Kg, -100 * brought.ElementKg(element));
            return new(LinearQuantity.Of(element), bounds.Least <= 0 ? bounds with { Least = null } : bounds);
        }

        return new(
            new(row.Quantity.Name, free.ToDictionary(t => t.Key, t => t.Value / brought.Kg), row.Quantity.Value(brought.Analysis)),
            row.Bounds);
    }

    private static bool Nonnegative(QuantityBounds row) => row.Quantity.Constant == 0 && row.Quantity.Terms.Count == 1;

    private static void Check(QuantityBounds row, Metal brought, List<Finding> findings)
    {
        var value = row.Quantity.Value(brought.Analysis);
        if (row.Quantity.Terms.ContainsKey(Element.S) && !row.Bounds.Hold(value)) findings.Add(new Finding(row.Quantity.Name, "route.sulphur", value));
    }
}

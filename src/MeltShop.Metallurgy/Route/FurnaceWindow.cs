using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Route;

/// <summary>The window of the furnace iron that a poured window and a route ask for.</summary>
/// <param name="Rows">
/// Rows on the furnace iron, in the order of the poured rows; sulphur comes last where the route treats. A least that the route alone
/// brings is null. The row of an element reads as its percent at the most sulphur: less sulphur takes less alloy, which brings less silicon.
/// </param>
/// <param name="Findings">
/// What cannot be: <c>route.noAlloy</c> (no mass of the alloy reaches the magnesium), <c>route.tooMuch</c> (name, what the route
/// alone brings, most allowed), <c>route.sulphur</c> (sulphur left by the treatment lies outside its poured window).
/// </param>
public sealed record FurnaceWindow(IReadOnlyList<QuantityBounds> Rows, IReadOnlyList<Finding> Findings)
{
    /// <summary>So many times what the treatment leaves the most sulphur has to be for its alloy to follow it: the mass of alloy and inoculant dilutes a little.</summary>
    private const double WorthOfSulphur = 1.1;

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "furnace-window",
        Name = "Furnace window from the poured window",
        Sentence = "What the furnace iron must hold so that the poured iron lies in its window after treatment and inoculation.",
        Expression = "x_furnace + k·(s − s_most) = T · x_poured − b; without a treatment k = 0",
        Symbols =
        [
            new("T", "poured iron per kilogram of furnace iron with the most sulphur", "kg/kg"),
            new("b", "what cover, alloy and inoculants bring of the element, of that iron", "%"),
            new("s, s_most", "sulphur of the furnace iron, the most that is planned for", "%"),
            new("k", "what more alloy brings for more sulphur, its dilution counted", "1"),
        ],
        Unit = "%",
        Sources = [Bibliography.Balance],
        Range = "The alloy is dosed on the sulphur of the furnace iron, which is between what the treatment leaves and the most: below what it leaves no less alloy "
            + "is needed, and silicon is poured up to k times that difference higher. k holds for the aim, or the middle of the bounds; a bound is off by about a "
            + "quarter of a percent of its distance from there for each 0.01 % of sulphur under the most. Cover steel counts only "
            + "where the recipe names it, by its share of the iron tapped and with its own analysis.",
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
        if (Bare(route, route.Treatment?.SulphurPercent) is not { } brought) return new([], [new Finding("treatment", "route.noAlloy")]);
        var less = WithLess(route);

        var rows = new List<QuantityBounds>();
        var findings = new List<Finding>();
        foreach (var row in poured)
        {
            var furnace = Turn(row, brought, less, route.Treatment);
            if (furnace.Quantity.Terms.Count == 0) Check(row, brought, findings);
            else
            {
                if (Nonnegative(row) && furnace.Bounds.Most < -Bounds.Tolerance)
                {
                    findings.Add(new Finding(row.Quantity.Name, "route.tooMuch", row.Quantity.Name, row.Quantity.Value(brought.Analysis), row.Bounds.Most!.Value));
                }

                rows.Add(furnace);
            }
        }

        if (route.Treatment is { } planned) rows.Add(new(LinearQuantity.Of(Element.S), new(Most: planned.SulphurPercent)));
        return new(rows, findings);
    }

    /// <summary>
    /// What brings the reading of a row and its bounds to the percent that there is, in percentage points: an element that follows the sulphur reads as its percent at the
    /// most sulphur. 0 for a derived quantity.
    /// </summary>
    /// <param name="name">Name of the row: an element symbol, or a derived quantity.</param>
    /// <param name="value">What the row reads.</param>
    /// <param name="furnace">Analysis of the furnace iron that it reads so, mass percent.</param>
    public static double ToOwnPercent(string name, double value, Analysis furnace)
    {
        ArgumentNullException.ThrowIfNull(furnace);
        return Element.TryParse(name, out var element) ? furnace.OrZero(element) - value : 0;
    }

    private static Metal? Bare(PouringRoute route, double? sulphurPercent) => route.Poured(Metal.Of(1, sulphurPercent is { } s ? Analysis.Of((Element.S, s)) : Analysis.Empty));

    /// <summary>The same with the alloy that less sulphur takes: what is brought is linear in the sulphur as long as the treatment takes some of it out.</summary>
    private static (double SulphurPercent, Metal Brought)? WithLess(PouringRoute route)
    {
        if (route.Treatment is not { } t || t.SulphurPercent <= WorthOfSulphur * t.Recipe.SulphurLeftPercent) return null;
        var sulphur = (t.SulphurPercent + t.Recipe.SulphurLeftPercent) / 2;
        return Bare(route with { Treatment = t with { SulphurPercent = sulphur } }, sulphur) is { } brought ? (sulphur, brought) : null;
    }

    // An element keeps its own row, in percent of the furnace iron; a derived quantity keeps its bounds and changes its terms.
    private static QuantityBounds Turn(QuantityBounds row, Metal brought, (double SulphurPercent, Metal Brought)? less, PlannedTreatment? treatment)
    {
        var free = row.Quantity.Terms.Where(t => treatment is null || (t.Key != Element.Mg && t.Key != Element.S)).ToDictionary();
        var perSulphur = less is { } other && free.Count > 0 ? (Over(row, brought) - Over(row, other.Brought)) / (treatment!.SulphurPercent - other.SulphurPercent) : 0;
        if (free.Count == 1 && row.Quantity.Terms.Count == 1 && row.Quantity.Constant == 0 && free.Single() is var (element, factor) && factor == 1)
        {
            var bounds = row.Bounds.Scaled(brought.Kg, -100 * brought.ElementKg(element));
            return new(Following(LinearQuantity.Of(element), perSulphur, treatment), bounds.Least <= 0 ? bounds with { Least = null } : bounds);
        }

        var turned = new LinearQuantity(row.Quantity.Name, free.ToDictionary(t => t.Key, t => t.Value / brought.Kg), row.Quantity.Value(brought.Analysis));
        return new(Following(turned, perSulphur / brought.Kg, treatment), row.Bounds);
    }

    /// <summary>How far what is brought lies over where the row wants to be, times the mass: linear in the sulphur.</summary>
    private static double Over(QuantityBounds row, Metal brought) => brought.Kg * (row.Quantity.Value(brought.Analysis) - Wanted(row.Bounds));

    private static double Wanted(Bounds bounds) => bounds.Aim ?? (bounds.Least + bounds.Most) / 2 ?? bounds.Least ?? bounds.Most ?? 0;

    private static LinearQuantity Following(LinearQuantity quantity, double perSulphur, PlannedTreatment? treatment) => perSulphur == 0 ? quantity : quantity with
    {
        Terms = quantity.Terms.Append(new(Element.S, perSulphur)).ToDictionary(),
        Constant = quantity.Constant - perSulphur * treatment!.SulphurPercent,
    };

    private static bool Nonnegative(QuantityBounds poured) => poured.Quantity is { Constant: 0, Terms.Count: 1 };

    private static void Check(QuantityBounds row, Metal brought, List<Finding> findings)
    {
        var value = row.Quantity.Value(brought.Analysis);
        if (row.Quantity.Terms.ContainsKey(Element.S) && !row.Bounds.Hold(value)) findings.Add(new Finding(row.Quantity.Name, "route.sulphur", value));
    }
}

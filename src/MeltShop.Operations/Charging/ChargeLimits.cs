using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Grades;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Operations.Charging;

/// <summary>The limits of a charge: what its target asks of the furnace iron, where a person has not set others for this charge.</summary>
internal static class ChargeLimits
{
    public static List<QuantityLimit> Of(IEnumerable<WindowView> windows, FieldCheck fields) => Of([.. windows.SelectMany(TargetRow.Of)], [], null, fields);

    /// <summary>
    /// The windows with what a person set for this charge where a quantity is not linear: its rows are made for their bounds, so another bound makes other rows.
    /// </summary>
    public static IReadOnlyList<WindowView> Chosen(IEnumerable<WindowView> windows, IReadOnlyList<LimitChoice>? choices, FieldCheck fields) =>
    [
        .. windows.Select(window =>
        {
            if (!TargetRow.IsCurve(window.Quantity) || choices?.FirstOrDefault(c => c.Quantity == window.Quantity) is not { } choice) return window;
            var (least, most) = (choice.Least ?? window.Least, choice.Most ?? window.Most);
            return Check(window.Quantity, least, most, fields) && fields.Findings.Count == 0 ? window with { Least = least, Most = most } : window;
        }),
    ];

    public static List<QuantityLimit> Of(IReadOnlyList<TargetRow> rows, IReadOnlyList<LimitChoice> choices, double? nearnessPrice, FieldCheck fields)
    {
        var limits = new List<QuantityLimit>();
        foreach (var row in rows)
        {
            var choice = row.IsCurved || row.IsAdded ? null : choices.FirstOrDefault(c => c.Quantity == row.Name);
            var (least, most) = (choice?.Least ?? row.Bounds.Least, choice?.Most ?? row.Bounds.Most);
            if (row.IsCurved || row.IsAdded ? least is null && most is null : !Check(row.Name, least, most, fields)) continue;
            var limit = new QuantityLimit(row.Quantity, least, most, row.Margin)
            {
                Nearness = IsPriced(row) ? Near(row.Bounds.Aim, least, most, nearnessPrice) : null, HeldMargin = row.IsCurved ? row.WindowMargin : 0,
            };
            limits.AddRange(OnItsOwn(limit, choice));
        }

        foreach (var choice in choices.Where(c => rows.All(row => row.Name != c.Quantity)))
        {
            if (WindowQuantity.Find(choice.Quantity) is not { } quantity) fields.Add($"limits.{choice.Quantity}", "quantity.unknown", choice.Quantity);
            else if (Check(choice.Quantity, choice.Least, choice.Most, fields))
            {
                limits.AddRange(quantity.Rows(new(choice.Least, null, choice.Most)).Select(row => new QuantityLimit(row.Quantity, row.Bounds.Least, row.Bounds.Most)));
            }
        }

        return limits;
    }

    /// <summary>What a person says of an element of the furnace iron is said of its percent, whatever alloy the sulphur takes; the other bound follows that.</summary>
    private static IEnumerable<QuantityLimit> OnItsOwn(QuantityLimit limit, LimitChoice? choice)
    {
        if (limit.Quantity.Terms.Count == 1 || choice is null or { Least: null, Most: null } || !Element.TryParse(limit.Quantity.Name, out var element)) return [limit];
        var own = limit with { Quantity = LinearQuantity.Of(element) };
        return (choice.Least, choice.Most) switch
        {
            (null, _) => limit.Min is null ? [own] : [limit with { Max = null }, own with { Min = null, Nearness = null }],
            (_, null) => limit.Max is null ? [own] : [limit with { Min = null }, own with { Max = null, Nearness = null }],
            _ => [own],
        };
    }

    /// <returns>False where it binds nothing: an aim alone.</returns>
    internal static bool Check(string quantity, double? least, double? most, FieldCheck fields)
    {
        var path = $"limits.{quantity}";
        if (WindowQuantity.Find(quantity) is { } known)
        {
            fields.Bound($"{path}.least", least, known);
            fields.Bound($"{path}.most", most, known);
        }

        if (least > most) fields.Add($"{path}.least", "window.crossed", least, most!);
        return least is not null || most is not null;
    }

    /// <summary>The price of nearness is for a percentage point: a degree or a factor is none.</summary>
    private static bool IsPriced(TargetRow row) => WindowQuantity.Find(row.Name) is null or { Unit: "%", Line: not null };

    /// <summary>An aim that lies outside bounds which were changed for this charge is none any more.</summary>
    private static Nearness? Near(double? aim, double? least, double? most, double? price) =>
        price > 0 && aim is { } wanted && !(wanted < least) && !(wanted > most) ? new Nearness(wanted, price.Value) : null;
}

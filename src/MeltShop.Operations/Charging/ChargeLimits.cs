using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Grades;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Operations.Charging;

/// <summary>The limits of a charge: what its target asks of the furnace iron, where a person has not set others for this charge.</summary>
internal static class ChargeLimits
{
    public static List<QuantityLimit> Of(IEnumerable<WindowView> windows, FieldCheck fields) => Of([.. windows.Select(TargetRow.Of)], [], null, fields);

    public static List<QuantityLimit> Of(IReadOnlyList<TargetRow> rows, IReadOnlyList<LimitChoice> choices, double? nearnessPrice, FieldCheck fields)
    {
        var limits = new List<QuantityLimit>();
        foreach (var row in rows)
        {
            var choice = choices.FirstOrDefault(c => c.Quantity == row.Name);
            var (least, most) = (choice?.Least ?? row.Bounds.Least, choice?.Most ?? row.Bounds.Most);
            if (!Check(row.Name, least, most, fields)) continue;
            limits.Add(new QuantityLimit(row.Quantity, least, most, row.Margin) { Nearness = Near(row.Bounds.Aim, least, most, nearnessPrice) });
        }

        foreach (var choice in choices.Where(c => rows.All(row => row.Name != c.Quantity)))
        {
            if (choice.Quantity != GradeInputs.CarbonEquivalent && !Element.TryParse(choice.Quantity, out _)) fields.Add($"limits.{choice.Quantity}", "quantity.unknown", choice.Quantity);
            else if (Check(choice.Quantity, choice.Least, choice.Most, fields)) limits.Add(new QuantityLimit(LimitedQuantity.Of(choice.Quantity), choice.Least, choice.Most));
        }

        return limits;
    }

    /// <returns>False where it binds nothing: an aim alone.</returns>
    private static bool Check(string quantity, double? least, double? most, FieldCheck fields)
    {
        var path = $"limits.{quantity}";
        fields.Percent($"{path}.least", least);
        fields.Percent($"{path}.most", most);
        if (least > most) fields.Add($"{path}.least", "window.crossed", least, most!);
        return least is not null || most is not null;
    }

    /// <summary>An aim that lies outside bounds which were changed for this charge is none any more.</summary>
    private static Nearness? Near(double? aim, double? least, double? most, double? price) =>
        price > 0 && aim is { } wanted && !(wanted < least) && !(wanted > most) ? new Nearness(wanted, price.Value) : null;
}

using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Grades;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Operations.Charging;

/// <summary>The limits of a charge: the furnace window of its grade, where a person has not set others for this charge.</summary>
internal static class ChargeLimits
{
    public static List<QuantityLimit> Of(IEnumerable<WindowView> windows, IReadOnlyList<LimitChoice> choices, FieldCheck fields)
    {
        var limits = new List<QuantityLimit>();
        var furnace = windows.ToList();
        foreach (var window in furnace)
        {
            var choice = choices.FirstOrDefault(c => c.Quantity == window.Quantity);
            Add(limits, window.Quantity, choice?.Least ?? window.Least, choice?.Most ?? window.Most, window.Margin, fields);
        }

        foreach (var choice in choices.Where(c => furnace.All(w => w.Quantity != c.Quantity)))
        {
            Add(limits, choice.Quantity, choice.Least, choice.Most, margin: 0, fields);
        }

        return limits;
    }

    private static void Add(List<QuantityLimit> limits, string quantity, double? least, double? most, double margin, FieldCheck fields)
    {
        var path = $"limits.{quantity}";
        if (quantity != GradeInputs.CarbonEquivalent && !Element.TryParse(quantity, out _))
        {
            fields.Add(path, "quantity.unknown", quantity);
            return;
        }

        fields.Percent($"{path}.least", least);
        fields.Percent($"{path}.most", most);
        if (least > most) fields.Add($"{path}.least", "window.crossed", least, most!);
        if (least is null && most is null) return; // an aim alone binds nothing
        limits.Add(new QuantityLimit(LimitedQuantity.Of(quantity), least, most, margin));
    }
}

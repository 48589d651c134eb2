using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Route;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What a charge misses, in words: the same for one that was changed by hand and for the rest of one that is being weighed in.</summary>
public static class MissText
{
    /// <param name="text">The texts.</param>
    /// <param name="miss">What is missed.</param>
    /// <param name="name">What people call it; the miss names it by its code.</param>
    public static string Of(IStringLocalizer<Texts.Charge> text, Miss miss, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(miss);
        return text[$"Miss.{miss.Kind}.{(miss.IsMax ? "Most" : "Least")}", name, Show(miss, miss.Value, miss.Asked), Show(miss, miss.Asked, miss.Value), By(miss)];
    }

    /// <summary>How far off: of a quantity in its own unit, which a row need not be.</summary>
    private static string By(Miss miss) => miss.Kind is MissKind.Quantity
        ? QuantityText.Difference(miss.Name, Math.Abs(WindowQuantity.Told(miss.Name, miss.Value) - WindowQuantity.Told(miss.Name, miss.Asked)))
        : Show(miss, miss.By, 0);

    /// <summary>One number of it with its unit, with as many decimals as it takes to tell it from the other.</summary>
    private static string Show(Miss miss, double number, double other) => miss.Kind switch
    {
        MissKind.Quantity => QuantityText.Show(miss.Name, WindowQuantity.Told(miss.Name, number), WindowQuantity.Told(miss.Name, other)),
        MissKind.MaterialPercent or MissKind.GroupPercent => NumberText.ShowBeside(number, 1, other) + " %",
        MissKind.Volume => NumberText.ShowBeside(number, 2, other) + " m³",
        _ => MassText.ShowBeside(number, other),
    };
}

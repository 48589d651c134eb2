using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Route;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What a charge misses, in words: the same for one that was changed by hand and for the rest of one that is being weighed in.</summary>
public sealed class MissText(IStringLocalizer<Texts.Charge> text, IStringLocalizer<Texts.Limits> limits, IStringLocalizer<Texts.Yard> yard)
{
    /// <param name="miss">What is missed.</param>
    /// <param name="materialOf">What people call a material; the miss names it by its code.</param>
    public string Of(Miss miss, Func<string, string> materialOf)
    {
        ArgumentNullException.ThrowIfNull(miss);
        ArgumentNullException.ThrowIfNull(materialOf);
        var side = miss.IsMax ? "Most" : "Least";
        if (miss.Kind is MissKind.Quantity) return OfQuantity(miss, side);
        var name = miss.Kind switch
        {
            MissKind.GroupKg or MissKind.GroupPercent => KindText.Of(miss.Name, text, yard),
            MissKind.Volume => text["Room." + miss.Name].Value,
            _ => materialOf(miss.Name),
        };
        return text[$"Miss.{miss.Kind}.{side}", name, Show(miss, miss.Value, miss.Asked), Show(miss, miss.Asked, miss.Value)];
    }

    /// <summary>People know the limit, and margin and scatter apart from it: what is inside, and not by these, is said to be so.</summary>
    private string OfQuantity(Miss miss, string side)
    {
        var outward = miss.IsMax ? 1 : -1;
        double Told(double row) => WindowQuantity.Told(miss.Name, row);
        var (value, kept, limit) = (Told(miss.Value), Told(miss.Asked), Told(miss.Asked + (outward * miss.Inward)) + (outward * miss.HeldMargin));
        var (name, by) = (QuantityText.Name(limits, miss.Name), outward * (value - limit));
        return by > 0
            ? text[$"Miss.Quantity.{side}", name, QuantityText.Show(miss.Name, value, limit), QuantityText.Show(miss.Name, limit, value), QuantityText.Difference(miss.Name, by)]
            : text[$"Miss.Margin.{side}", name, QuantityText.Show(miss.Name, value, limit, kept), QuantityText.Show(miss.Name, limit, value), QuantityText.Difference(miss.Name, Math.Abs(limit - kept))];
    }

    /// <summary>One number of it with its unit, with as many decimals as it takes to tell it from the other.</summary>
    private static string Show(Miss miss, double number, double other) => miss.Kind switch
    {
        MissKind.MaterialPercent or MissKind.GroupPercent => UnitText.Percent(NumberText.ShowBeside(number, 1, other)),
        MissKind.Volume => UnitText.Of(NumberText.ShowBeside(number, 2, other), "m³"),
        _ => MassText.ShowBeside(number, other),
    };
}

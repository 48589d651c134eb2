using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Route;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Limits;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Pages.Charge;

/// <summary>A bound that clashes, in words: the same for a charge and for the correction of a bath.</summary>
public static class ClashText
{
    /// <param name="text">The texts.</param>
    /// <param name="names">Names of quantities.</param>
    /// <param name="clash">What clashes.</param>
    /// <param name="yard">Names of kinds; needed where kinds may clash.</param>
    /// <param name="window">What the grade says of the quantity, where the bound is of its window: that of a quantity which is not linear holds the margin already.</param>
    public static string Of(
        IStringLocalizer<Texts.Charge> text, IStringLocalizer<Texts.Limits> names, Conflict clash, IStringLocalizer<Texts.Yard>? yard = null, WindowView? window = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(clash);
        if (clash.Bound is null)
        {
            var with = string.Join(", ", clash.Groups.Select(group => yard is null ? group : KindText.Of(group, text, yard)).Concat(clash.Rooms.Select(room => text["Room." + room].Value)));
            return (clash.Nearest, with.Length > 0) switch
            {
                ({ } mass, false) => text["ClashMass", MassText.Show(clash.Limit ?? 0), MassText.Show(mass)],
                ({ } mass, true) => text["ClashMassWith", MassText.Show(clash.Limit ?? 0), MassText.Show(mass), with],
                (null, false) => text["ClashMassUnknown", MassText.Show(clash.Limit ?? 0)],
                _ => text["ClashMassWithUnknown", MassText.Show(clash.Limit ?? 0), with],
            };
        }

        double? Told(double? row) => row is { } number ? WindowQuantity.Told(clash.Quantity, number) : null;
        var name = QuantityText.Name(names, clash.Quantity);
        var limit = QuantityText.Show(clash.Quantity, Told(clash.Limit) ?? 0);
        var bound = text[clash.Bound == "min" ? "Least" : "Most"].Value;
        if (window is { Margin: > 0 and var margin } && WindowQuantity.Find(clash.Quantity) is { Line: null } && (clash.Bound == "min" ? window.Least : window.Most) is { } whole)
        {
            var asked = QuantityText.Show(clash.Quantity, whole);
            var inside = QuantityText.Show(clash.Quantity, margin);
            return clash.Nearest is { } reached
                ? text["ClashWithMargin", name, bound, asked, inside, QuantityText.Show(clash.Quantity, Told(reached)!.Value, Told(clash.Limit))]
                : text["ClashWithMarginUnknown", name, bound, asked, inside];
        }

        return clash.Nearest is { } nearest
            ? text[IsInside(clash, nearest) ? "ClashMargin" : "Clash", name, bound, limit, QuantityText.Show(clash.Quantity, Told(nearest)!.Value, Told(clash.Limit))]
            : text["ClashUnknown", name, bound, limit];
    }

    // What is reached lies within the limit: only the margin to it is not kept.
    private static bool IsInside(Conflict clash, double nearest) => clash.Bound == "min" ? nearest >= clash.Limit : nearest <= clash.Limit;
}

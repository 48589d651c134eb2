using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Route;
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
    public static string Of(IStringLocalizer<Texts.Charge> text, IStringLocalizer<Texts.Limits> names, Conflict clash, IStringLocalizer<Texts.Yard>? yard = null)
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
        var isLeast = clash.Bound == "min";
        var (name, bound) = (QuantityText.Name(names, clash.Quantity), text[isLeast ? "Least" : "Most"].Value);
        var whole = (Told(clash.Limit) ?? 0) + (isLeast ? -clash.HeldMargin : clash.HeldMargin);
        var asked = QuantityText.Show(clash.Quantity, whole, 0); // never a trace as none
        var margin = QuantityText.Difference(clash.Quantity, clash.Margin + clash.HeldMargin);
        var nearest = clash.Nearest is { } reached ? QuantityText.Show(clash.Quantity, Told(reached)!.Value, Told(clash.Limit), whole) : null;
        return (clash.Margin + clash.HeldMargin > 0, nearest) switch
        {
            (true, not null) => text["ClashWithMargin", name, bound, asked, margin, nearest],
            (true, null) => text["ClashWithMarginUnknown", name, bound, asked, margin],
            (false, not null) => text["Clash", name, bound, asked, nearest],
            _ => text["ClashUnknown", name, bound, asked],
        };
    }
}

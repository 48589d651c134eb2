using MeltShop.Charging.Plans;
using MeltShop.Web.Components.Fields;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Pages.Charge;

/// <summary>A bound that clashes, in words: the same for a charge and for the correction of a bath.</summary>
public static class ClashText
{
    public static string Of(IStringLocalizer<Texts.Charge> text, Conflict clash)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(clash);
        if (clash.Bound is null)
        {
            return clash.Nearest is { } mass
                ? text["ClashMass", MassText.Show(clash.Limit ?? 0), MassText.Show(mass)]
                : text["ClashMassUnknown", MassText.Show(clash.Limit ?? 0)];
        }

        var decimals = LimitRow.DecimalsOf(clash.Quantity);
        var limit = NumberText.Show(clash.Limit ?? 0, decimals) + " %";
        var bound = text[clash.Bound == "min" ? "Least" : "Most"].Value;
        return clash.Nearest is { } nearest
            ? text[IsInside(clash, nearest) ? "ClashMargin" : "Clash", clash.Quantity, bound, limit, NumberText.ShowBeside(nearest, decimals, clash.Limit) + " %"]
            : text["ClashUnknown", clash.Quantity, bound, limit];
    }

    // What is reached lies within the limit: only the margin to it is not kept.
    private static bool IsInside(Conflict clash, double nearest) => clash.Bound == "min" ? nearest >= clash.Limit : nearest <= clash.Limit;
}

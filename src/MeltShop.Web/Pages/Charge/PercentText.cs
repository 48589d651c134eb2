using MeltShop.Metallurgy.Elements;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Mass percents of an element as a report shows them, but never a trace as none.</summary>
public static class PercentText
{
    private const int MostDecimals = 9;

    /// <param name="element">Its customary decimals are shown, and more where they would print zero for what is not.</param>
    /// <param name="percent">Mass percent.</param>
    public static string Show(Element element, double percent)
    {
        ArgumentNullException.ThrowIfNull(element);
        var decimals = element.Decimals;
        while (percent != 0 && decimals < MostDecimals && Math.Round(percent, decimals) == 0) decimals++;
        return NumberText.Show(percent, decimals);
    }
}

using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>What a trend can be drawn of: elements, and what is reckoned from the means of one sample.</summary>
/// <remarks>The liquidus temperatures are left out: they follow from C, Si and P as the carbon equivalents do, and draw the same line.</remarks>
internal static class TrendQuantities
{
    /// <summary>By its name in an address; carbon where there is none such, as where one speaks of another iron.</summary>
    public static WindowQuantity Find(string? name, bool isTreated) => WindowQuantity.Find(name) is { } found && Fits(found, isTreated) ? found : WindowQuantity.Of(Element.C);

    public static IEnumerable<Choice> Choices(IStringLocalizer<Texts.Limits> text, bool isTreated) =>
    [
        .. Element.All.Where(element => element != Element.Fe).Select(element => new Choice(element.Symbol, element.Symbol)),
        .. WindowQuantity.Derived.Where(one => Fits(one, isTreated)).Select(one => new Choice(one.Name, QuantityText.Name(text, one.Name))),
    ];

    private static bool Fits(WindowQuantity quantity, bool isTreated) => !quantity.IsTemperature && (isTreated || quantity.Iron != IronState.Poured);
}

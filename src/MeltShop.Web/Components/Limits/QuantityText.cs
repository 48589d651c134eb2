using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Route;
using MeltShop.Web.Components.Fields;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Components.Limits;

/// <summary>What a window bounds, in words and figures: an element by its symbol, a derived quantity by its name, each in its unit.</summary>
public static class QuantityText
{
    /// <summary>What people call it; a name that nobody knows stays as it is.</summary>
    public static string Name(IStringLocalizer<Texts.Limits> text, string quantity)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text[$"Quantity.{quantity}"] is { ResourceNotFound: false } said ? said.Value : quantity;
    }

    /// <summary>Several of them.</summary>
    public static string Names(IStringLocalizer<Texts.Limits> text, IEnumerable<string> quantities) => string.Join(", ", quantities.Select(quantity => Name(text, quantity)));

    /// <summary>All that a window can bound, derived quantities first.</summary>
    public static IEnumerable<Choice> Choices(IStringLocalizer<Texts.Limits> text) =>
    [
        .. WindowQuantity.Derived.Select(quantity => new Choice(quantity.Name, Name(text, quantity.Name))),
        .. Element.All.Where(element => element != Element.Fe).Select(element => new Choice(element.Symbol, element.Symbol)),
    ];

    /// <summary>Decimals customary for it.</summary>
    public static int Decimals(string quantity) => WindowQuantity.Find(quantity)?.Decimals ?? 2;

    public static Dimension Dimension(string? quantity) => WindowQuantity.Find(quantity) is { IsTemperature: true } ? Units.Dimension.Temperature : Units.Dimension.Plain;

    /// <summary>The unit in which it is shown and typed; nothing for a pure number.</summary>
    public static string Unit(string? quantity) => WindowQuantity.Find(quantity) switch
    {
        null => "%",
        { IsTemperature: true } => ShopUnits.Current.Temperature.Sign,
        { Unit: "1" } => "",
        var known => known.Unit,
    };

    /// <summary>A value or bound in the shop's unit.</summary>
    public static double Shown(string quantity, double recorded) => ShopUnits.Current.Of(Dimension(quantity)).FromRecorded(recorded);

    /// <inheritdoc cref="Shown(string, double)"/>
    public static double? Shown(string quantity, double? recorded) => recorded is { } number ? Shown(quantity, number) : null;

    /// <summary>With its unit, and with as many decimals as it takes not to contradict the bounds beside it.</summary>
    public static string Show(string quantity, double recorded, double? least = null, double? most = null) =>
        UnitText.Of(NumberText.ShowBeside(Shown(quantity, recorded), Decimals(quantity), Shown(quantity, least), Shown(quantity, most)), Unit(quantity));

    /// <summary>A difference or a scatter, with its unit; with as many decimals as are asked for, or as it takes not to be printed as none.</summary>
    public static string Difference(string quantity, double recorded, int? decimals = null)
    {
        var unit = Dimension(quantity) == Units.Dimension.Temperature ? ShopUnits.Current.TemperatureDifference : new Measure(Unit(quantity));
        var shown = unit.FromRecorded(recorded);
        return UnitText.Of(decimals is { } places ? NumberText.Show(shown, places) : NumberText.ShowBeside(shown, Decimals(quantity), 0), unit.Sign);
    }

    /// <summary>A bound with all its digits, without its unit.</summary>
    public static string Bound(string quantity, double? recorded) => recorded is { } number ? NumberText.ShowAtLeast(ShopUnits.Current.Of(Dimension(quantity)).Readable(number), Decimals(quantity)) : "–";
}

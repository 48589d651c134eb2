using MeltShop.Metallurgy;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Units;

/// <summary>Prices and energies for a tonne, for as much as the shop says them: 1000 kg, or a ton of 2000 lb. Every one on a page is printed here.</summary>
public static class PriceText
{
    /// <summary>Hundredths of the currency.</summary>
    private const int MoneyDecimals = 2;

    private static Measure PerTonne => ShopUnits.Current.PerTonne;

    /// <summary>The unit of a price: "EUR/t".</summary>
    public static string Unit(string currency) => $"{currency}/{PerTonne.Sign}";

    /// <summary>Without its unit, for a column or a text that names it.</summary>
    public static string Number(double perTonne, int decimals = MoneyDecimals) => NumberText.Show(PerTonne.FromRecorded(perTonne), decimals);

    /// <inheritdoc cref="Number(double, int)"/>
    public static string Number(decimal perTonne) => Number((double)perTonne);

    /// <summary>With its unit.</summary>
    public static string Show(double perTonne, string currency, int decimals = MoneyDecimals) => UnitText.Of(Number(perTonne, decimals), Unit(currency));

    /// <inheritdoc cref="Show(double, string, int)"/>
    public static string Show(decimal perTonne, string currency) => Show((double)perTonne, currency);

    /// <summary>
    /// A typed price as it is recorded, in hundredths for 1000 kg. One of a short ton goes to the nearest of them, and comes back as it was typed:
    /// a hundredth for 1000 kg is less than one for the smaller short ton.
    /// </summary>
    public static decimal? Recorded(QuantityEntry price)
    {
        ArgumentNullException.ThrowIfNull(price);
        return price.Value is not { } perTonne ? null : price.Unit.IsRecorded ? (decimal)perTonne : Math.Round((decimal)perTonne, MoneyDecimals, MidpointRounding.AwayFromZero);
    }

    /// <summary>What is wrong with a typed price that the operation cannot see any more: <c>money.decimals</c> in the unit in which it was typed.</summary>
    public static IEnumerable<Finding> Check(QuantityEntry price)
    {
        ArgumentNullException.ThrowIfNull(price);
        if (!price.Unit.IsRecorded && price.Reading.Value is { } typed && Math.Round(typed, MoneyDecimals) != typed) yield return new(price.Path, "money.decimals", typed);
    }
}

using MeltShop.Records.Reading.Changes;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Components.Units;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Components.Changes;

/// <summary>A changed value in words: what it is, what it was, what it is now. What has no words is no business of a person at a form.</summary>
internal sealed class ChangeWords(IStringLocalizer<Texts.Changes> text, ShopSite site)
{
    private const string Nothing = "–";

    private static readonly string[] Units = ["Kg", "C", "Percent"];

    public bool Knows(ValueChange change) => !Label(change).ResourceNotFound;

    /// <summary>Its name, after that of its row where there are several: "Si, furnace: most".</summary>
    public string Name(ValueChange change) => change.Which.Count == 0
        ? Label(change)
        : $"{string.Join(", ", change.Which.Select(which => Value(change, which)))}: {Label(change)}";

    /// <summary>With its unit, which the name of a column ends with.</summary>
    public string Value(ValueChange change, object? value) => value switch
    {
        null or "" => Nothing,
        double number => Number(change.Column, number),
        decimal price when change.Column.EndsWith("PerTonne", StringComparison.Ordinal) => PriceText.Show(price, site.Currency),
        decimal money => UnitText.Of(NumberText.Show((double)money, 2), site.Currency),
        DateTimeOffset instant => site.DayAndTime(instant),
        DateOnly day => ShopSite.Day(day),
        bool yes => text[yes ? "Yes" : "No"],
        Enum choice => string.Join(", ", choice.ToString().Split(", ").Select(one => (string)text[$"{choice.GetType().Name}.{one}"])),
        _ => value.ToString()!,
    };

    private static string Number(string column, double number) => Unit(column) switch
    {
        "Kg" => MassText.ShowFully(number),
        "C" => TemperatureText.Show(number),
        "Percent" => UnitText.Percent(NumberText.Show(number)),
        _ => NumberText.Show(number),
    };

    private static string? Unit(string column) => Units.FirstOrDefault(unit => column.EndsWith(unit, StringComparison.Ordinal));

    /// <summary>Columns of the same name mean the same nearly everywhere; where they do not, the table's own words go before.</summary>
    private LocalizedString Label(ValueChange change) =>
        text[$"{change.Table}.{change.Column}"] is { ResourceNotFound: false } own ? own : text[$"Column.{change.Column}"];
}

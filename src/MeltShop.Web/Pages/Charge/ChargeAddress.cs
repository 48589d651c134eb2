using System.Globalization;
using MeltShop.Charging.Choosing;
using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Route;
using MeltShop.Records.Reading.Charge;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Charge;

/// <summary>
/// What was chosen for a charge beside furnace, grade and melt, as the address says it: a value and the path of its field, numbers as the records
/// have them, whatever the shop's units. A page that is loaded anew goes on with the plan that somebody looked at, not with another one. That a price
/// of nought or less is right is said of that price: of another one it is asked anew.
/// </summary>
internal static class ChargeAddress
{
    private const string Materials = "materials.", Limits = "limits.", Bins = "bins.", ByHand = "byHand.", Own = "own", Out = "out", Prices = "rightPrices.", Why = "why", Yes = "yes", No = "no";

    public static IReadOnlyList<string> Write(ChargeDraft draft) =>
    [
        .. draft.ByHand is { } hand ? [$"{hand.From?.ToString() ?? Own}@{ByHand}"] : Array.Empty<string>(),
        .. draft.IsWhyTurned is { } turned ? [$"{(turned ? Yes : No)}@{Why}"] : Array.Empty<string>(),
        .. draft.RightPrices.OrderBy(price => price.Key, StringComparer.Ordinal).Select(price => $"{Text(price.Value)}@{Prices}{price.Key}"),
        .. draft.LeftOutBins.Order(StringComparer.Ordinal).Select(bin => $"{Out}@{Bins}{bin}"),
        .. draft.Form.Fields.Except([draft.Furnace, draft.Grade, draft.MeltKg]).Where(field => Value(field) is not (null or nameof(Operations.Charging.ChargeTarget.Furnace)))
            .Select(field => $"{Value(field)}@{field.Path}"),
    ];

    public static void Read(IEnumerable<string> wishes, ChargeDraft draft, ChargeView view)
    {
        var read = wishes.Select(wish => wish.Split('@', 2)).Where(parts => parts.Length == 2).Select(parts => (Value: parts[0], Path: parts[1])).ToList();
        if (read.Find(wish => wish.Path == ByHand).Value is { } from) draft.Make(new(draft.Form, Lines(read, view), Enum.TryParse<PlanKind>(from, out var kind) ? kind : null));
        foreach (var (value, path) in read)
        {
            if (path == Why) draft.IsWhyTurned = value == Yes;
            if (path.StartsWith(Prices, StringComparison.Ordinal) && Number(value) is { } price) draft.PriceIsRight(path[Prices.Length..], price);
            if (path.StartsWith(Bins, StringComparison.Ordinal)) draft.LeftOutBins.Add(path[Bins.Length..]);
            if (view.Materials.FirstOrDefault(material => IsOf(path, Materials + material.Code)) is { } of) draft.Material(of.Code);
            if (path.StartsWith(Limits, StringComparison.Ordinal) && Quantity(path) is { } quantity) draft.Limit(quantity);
            Fill(draft.Form.Fields.FirstOrDefault(field => field.Path == path), value);
        }
    }

    private static string? Quantity(string path)
    {
        var name = path[Limits.Length..].Split('.')[0];
        return WindowQuantity.Find(name) is not null || Element.TryParse(name, out _) ? name : null;
    }

    private static bool IsOf(string path, string start) => path.StartsWith(start, StringComparison.Ordinal) && (path.Length == start.Length || path.LastIndexOf('.') == start.Length);

    private static IEnumerable<PlanLine> Lines(IEnumerable<(string Value, string Path)> wishes, ChargeView view) =>
        from wish in wishes
        where wish.Path.StartsWith(ByHand, StringComparison.Ordinal) && view.Materials.Any(material => material.Code == wish.Path[ByHand.Length..])
        let kg = Number(wish.Value)
        where kg is not null
        select new PlanLine(wish.Path[ByHand.Length..], kg.Value, 0);

    private static string? Value(FieldEntry field) => field switch
    {
        QuantityEntry { Value: { } number } => Text(number),
        TextEntry { Value: { } text } => text,
        _ => null,
    };

    private static void Fill(FieldEntry? field, string value)
    {
        if (field is TextEntry text) text.Showing(value);
        else if (field is QuantityEntry quantity && Number(value) is { } number) quantity.Showing(number);
    }

    private static string Text(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    private static double? Number(string text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
}

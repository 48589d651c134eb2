using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Parts;

/// <summary>Reads the limits of a charge or a correction; the list has to be there and may be empty.</summary>
internal static class LimitReader
{
    /// <summary>More than any grade has.</summary>
    public const int Most = 200;

    /// <summary>All limits of the request.</summary>
    public static IReadOnlyList<QuantityLimit> ReadAll(ObjectReader request, bool withMargin) =>
        [.. (request.NeededList("limits", Most) ?? []).Select(reader => Read(reader, withMargin))];

    private static QuantityLimit Read(ObjectReader reader, bool withMargin)
    {
        var quantity = ReadQuantity(reader);
        var min = reader.Number("min", NumberRule.Any);
        var max = reader.Number("max", NumberRule.Any);
        var margin = withMargin ? reader.Number("margin", NumberRule.Margin) ?? 0 : 0;
        if (!reader.Has("min") && !reader.Has("max")) reader.Findings.Add(new(reader.Path, "limit.noBound"));
        if (min > max) reader.Report("min", "limit.minOverMax", min, max);
        reader.RefuseTheRest();
        return new(quantity, min, max, margin);
    }

    /// <summary>An element by its symbol, or a name of the caller's own with its terms.</summary>
    private static LinearQuantity ReadQuantity(ObjectReader reader)
    {
        var name = reader.NeededText("quantity");
        var before = reader.Findings.Count;
        var terms = reader.PerElement("terms", NumberRule.Any);
        var constant = reader.Number("constant", NumberRule.Any) ?? 0;
        var isElement = Element.TryParse(name, out var element);
        if (element == Element.Fe)
            reader.Report("quantity", "element.iron");
        else if (isElement && reader.Has("terms"))
            reader.Report("terms", "limit.elementWithTerms", name);
        else if (isElement && constant != 0)
            reader.Report("constant", "limit.elementWithConstant", name);
        else if (!isElement && name.Length > 0 && !reader.Has("terms"))
            reader.Report("quantity", "limit.noTerms", name);
        else if (!isElement && reader.Has("terms") && terms.Count == 0 && reader.Findings.Count == before)
            reader.Report("terms", "limit.emptyTerms");

        return element is null ? new(name, terms, constant) : LinearQuantity.Of(element);
    }
}

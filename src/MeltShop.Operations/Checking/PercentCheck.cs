using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Operations.Checking;

/// <summary>Checks analyses as they were typed, element symbols and all.</summary>
public static class PercentCheck
{
    /// <summary>
    /// <c>element.unknown</c>, <c>element.twice</c> and what <see cref="Analysis.Check"/> finds; each at <c>path.Symbol</c>, the sum at
    /// the path itself.
    /// </summary>
    public static void Analysis(this FieldCheck fields, string path, IEnumerable<(string Symbol, double Percent)> percents)
    {
        var known = new List<KeyValuePair<Element, double>>();
        foreach (var (symbol, percent) in percents)
        {
            if (!Element.TryParse(symbol, out var element)) fields.Add($"{path}.{symbol}", "element.unknown", symbol);
            else if (known.Any(k => k.Key == element)) fields.Add($"{path}.{symbol}", "element.twice", symbol);
            else known.Add(new(element, percent));
        }

        fields.AddAll(Metallurgy.Elements.Analysis.Check(known, path).Select(Named));
    }

    // The shop's pages have one text for a number that is none, wherever it was typed.
    private static Finding Named(Finding finding) => finding.Code == "percent.notFinite" ? new(finding.Path, "number.notANumber") : finding;
}

using MeltShop.Metallurgy.Elements;

namespace MeltShop.Web.Api.Reading;

internal sealed partial class ObjectReader
{
    /// <summary>An analysis that has to be there; empty, and findings, where it is not or is wrong.</summary>
    public Analysis NeededAnalysis(string name)
    {
        if (!Has(name)) Report(name, "field.missing");
        return Analysis(name);
    }

    /// <summary>An analysis that may be left out: nothing measured.</summary>
    public Analysis Analysis(string name) => Object(name)?.AsAnalysis() ?? Metallurgy.Elements.Analysis.Empty;

    /// <summary>This object as an analysis: percents by element symbol.</summary>
    public Analysis AsAnalysis()
    {
        var before = Findings.Count;
        // Iron passes here, so that the check of the analysis can say why it is refused.
        var percents = AsNumbers(NumberRule.Any, ironAllowed: true);
        Findings.AddRange(Metallurgy.Elements.Analysis.Check(percents, Path));
        return Findings.Count == before ? Metallurgy.Elements.Analysis.Of(percents) : Metallurgy.Elements.Analysis.Empty;
    }

    /// <summary>Numbers by element that may be left out; iron, which is the remainder, has none.</summary>
    public IReadOnlyDictionary<Element, double> PerElement(string name, NumberRule rule) =>
        Object(name)?.AsNumbers(rule, ironAllowed: false) ?? [];

    private Dictionary<Element, double> AsNumbers(NumberRule rule, bool ironAllowed)
    {
        var numbers = new Dictionary<Element, double>();
        foreach (var symbol in fields.Keys)
        {
            if (!Element.TryParse(symbol, out var element))
                Report(symbol, "element.unknown", symbol);
            else if (element == Element.Fe && !ironAllowed)
                Report(symbol, "element.iron");
            else if (Number(symbol, rule) is { } number)
                numbers[element] = number;
        }

        return numbers;
    }
}

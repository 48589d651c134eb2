using System.Globalization;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;

namespace MeltShop.Web.Demo;

/// <summary>Three burns around a value, scattered as a spectrometer scatters: invented, and the same at every start.</summary>
internal static class DemoBurns
{
    /// <summary>Relative scatter of each burn, in thousandths; they sum to nought.</summary>
    private static readonly double[] Scatter = [-4, 5, -1];

    public static IReadOnlyList<IReadOnlyList<ReadingInput>> Of(Analysis analysis) =>
        [.. Scatter.Select(thousandths => (IReadOnlyList<ReadingInput>)[.. analysis.Select(p => Reading(p.Key, p.Value * (1 + thousandths / 1000)))])];

    // A screen shows a digit more than a report does; what would read nought there is below what the instrument can tell.
    private static ReadingInput Reading(Element element, double percent)
    {
        var digits = element.Decimals + 1;
        var shown = Math.Round(percent, digits);
        var least = Math.Pow(10, -digits);
        return shown < least
            ? new(element.Symbol, least, true, "<" + least.ToString($"F{digits}", CultureInfo.InvariantCulture))
            : new(element.Symbol, shown, false, shown.ToString($"F{digits}", CultureInfo.InvariantCulture));
    }
}

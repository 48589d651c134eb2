using MeltShop.Metallurgy.Elements;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>An analysis in one line: what the grade limits first, the rest a press away.</summary>
public sealed partial class Percents
{
    [Parameter, EditorRequired]
    public Analysis Analysis { get; set; } = null!;

    /// <summary>Names of the quantities that count here; where there are none, all of the analysis is shown.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyCollection<string> Counting { get; set; } = [];

    /// <summary>What stands before it, with its unit; left out where a heading says that.</summary>
    [Parameter]
    public string? Label { get; set; }

    private IEnumerable<KeyValuePair<Element, double>> Main => Analysis.Where(percent => Counts(percent.Key));

    private IReadOnlyList<KeyValuePair<Element, double>> Others => [.. Analysis.Where(percent => !Counts(percent.Key))];

    /// <summary>Where nothing of it counts, a press would hide all that there is to read.</summary>
    private bool IsAllShown => Counting.Count == 0 || !Analysis.Any(percent => Counting.Contains(percent.Key.Symbol));

    private bool Counts(Element element) => IsAllShown || Counting.Contains(element.Symbol);
}

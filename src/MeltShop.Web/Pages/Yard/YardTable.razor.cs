using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Yard;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>The materials by kind: elements that decide a charge in columns, the others in words.</summary>
public sealed partial class YardTable
{
    private static readonly IReadOnlyList<Element> MainElements =
        [Element.C, Element.Si, Element.Mn, Element.P, Element.S, Element.Cr, Element.Cu];

    [Parameter, EditorRequired]
    public IReadOnlyList<MaterialView> Materials { get; set; } = [];

    [Parameter]
    public string? Currency { get; set; }

    /// <summary>The filter as it stands in the address, so that the way back leads to the same list.</summary>
    [Parameter]
    public string? Query { get; set; }

    private static MaterialPercentView? Of(MaterialView material, Element element) =>
        material.Analysis?.Percents.FirstOrDefault(percent => percent.Element == element);

    private static string Percents(Element element) => $"{element.Symbol} %";

    /// <summary>In which bins how much of it lies.</summary>
    private string Lying(MaterialView material) => string.Join(" · ", LotShare.Of(material, material.StockKg ?? 0)
        .Where(share => share.Bin is not null).GroupBy(share => share.Bin!, StringComparer.OrdinalIgnoreCase).OrderBy(bin => bin.Key, NaturalOrder.Names)
        .Select(bin => Text["LyingIn", bin.Key, MassText.Show(bin.Sum(share => share.Kg), 0)].Value));

    private static string Others(MaterialView material) => string.Join(" · ", (material.Analysis?.Percents ?? [])
        .Where(percent => !MainElements.Contains(percent.Element))
        .Select(percent => $"{percent.Element.Symbol}\u00a0{PercentCell.Shown(percent.Percent, percent.Element)}"));
}

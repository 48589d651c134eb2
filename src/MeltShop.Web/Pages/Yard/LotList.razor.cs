using MeltShop.Records.Reading.Recall;
using MeltShop.Records.Reading.Yard;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>The lots of a material that lie there with their bins, the last ones that were used up, and the way from each to its castings.</summary>
public sealed partial class LotList
{
    private const int MostUsedUp = 5;

    [Parameter, EditorRequired]
    public MaterialView Material { get; set; } = null!;

    /// <summary>Whether the person may move a lot.</summary>
    [Parameter]
    public bool IsOffered { get; set; }

    /// <summary>A lot lies elsewhere now: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>The last one first.</summary>
    private IReadOnlyList<LotView> UsedUp => [.. Material.Lots.Where(l => !l.IsThere).Reverse()];

    private string Recall(LotView lot) =>
        $"/recall?from={nameof(RecallFrom.Material)}&of={Uri.EscapeDataString(Material.Code)}&lot={Uri.EscapeDataString(lot.Name)}";
}

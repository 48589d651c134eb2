using MeltShop.Records.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Reading;

/// <summary>Says loudly that what stands here used something that was corrected since: what, by whom, when and why.</summary>
public sealed partial class StaleNotes
{
    [Parameter, EditorRequired]
    public IReadOnlyList<StaleNote> Notes { get; set; } = [];

    [Inject]
    private ShopSite Site { get; set; } = null!;
}

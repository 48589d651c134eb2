using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Reading.Charge;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What is in the furnace already, where it comes from, and what of it was measured.</summary>
public sealed partial class HeelCard
{
    [Parameter, EditorRequired]
    public ChargeFurnaceView Furnace { get; set; } = null!;

    /// <summary>Names of the quantities that the grade limits.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyCollection<string> Counting { get; set; } = [];

    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    [Inject]
    private ShopSite Site { get; set; } = null!;

    private IReadOnlyList<string> Unmeasured => [.. Counting.Where(name => Element.TryParse(name, out var element) && Furnace.Heel?.Analysis.Has(element) != true)];
}

using MeltShop.Metallurgy;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>A finding at its field or above its form.</summary>
public sealed partial class FindingText
{
    [Parameter, EditorRequired]
    public Finding Finding { get; set; } = null!;

    [Inject]
    private IServiceProvider Services { get; set; } = null!;

    private ShopSite? Site => Services.GetService<ShopSite>();
}

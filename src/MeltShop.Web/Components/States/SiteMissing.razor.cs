using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.States;

/// <summary>Says that the shop has not been set up yet, where a page needs to know it, and leads there.</summary>
public sealed partial class SiteMissing
{
    [Inject]
    private ShopSite Site { get; set; } = null!;
}

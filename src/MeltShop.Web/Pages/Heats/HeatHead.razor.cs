using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

public sealed partial class HeatHead
{
    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Inject]
    private ShopSite Site { get; set; } = null!;
}

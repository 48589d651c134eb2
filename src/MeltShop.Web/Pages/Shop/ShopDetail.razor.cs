using MeltShop.Operations.Sites;
using MeltShop.Records.Reading.Sites;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Shop;

/// <summary>What is the same for everybody in the shop.</summary>
public sealed partial class ShopDetail
{
    [Inject]
    private SitePage Page { get; set; } = null!;

    [Inject]
    private ChooseUnits Units { get; set; } = null!;

    protected override Task<SiteView?> Read(CancellationToken ct) => Page.Load(ct);

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Site;

    private async Task Chosen()
    {
        await Site.LoadAgain(Leaving);
        await Reload();
    }
}

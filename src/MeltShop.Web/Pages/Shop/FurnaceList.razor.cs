using MeltShop.Operations.Sites;
using MeltShop.Records.Reading.Sites;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Shop;

/// <summary>The furnaces of the shop: what a plan and a heat take from them.</summary>
public sealed partial class FurnaceList
{
    [Inject]
    private FurnacesPage Page { get; set; } = null!;

    [Inject]
    private AddFurnace Adding { get; set; } = null!;

    [Inject]
    private SetFurnace Setting { get; set; } = null!;

    protected override async Task<FurnacesView?> Read(CancellationToken ct) => await Page.Load(ct);

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Furnace or ChangeKind.Site;
}

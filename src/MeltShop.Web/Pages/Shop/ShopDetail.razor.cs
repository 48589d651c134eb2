using MeltShop.Operations.Sites;
using MeltShop.Records.Reading.Sites;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Shop;

/// <summary>What is the same for everybody in the shop, and what it still lacks before its first heat.</summary>
public sealed partial class ShopDetail
{
    [Inject]
    private SetUpPage Page { get; set; } = null!;

    [Inject]
    private SetUpSite SetUp { get; set; } = null!;

    [Inject]
    private ChooseUnits Units { get; set; } = null!;

    protected override async Task<SetUpView?> Read(CancellationToken ct) => await Page.Load(ct);

    protected override bool Concerns(ChangeNotice change) => change.Kind
        is ChangeKind.Site or ChangeKind.Furnace or ChangeKind.Grade or ChangeKind.Material or ChangeKind.Ladle or ChangeKind.Person;

    private async Task Changed()
    {
        await Site.LoadAgain(Leaving);
        await Reload();
    }
}

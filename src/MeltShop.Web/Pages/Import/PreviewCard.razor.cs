using MeltShop.Operations.Importing;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Import;

/// <summary>What a file would bring, before it counts.</summary>
public sealed partial class PreviewCard
{
    /// <summary>Enough to see that the map is right.</summary>
    private const int MostSamples = 20;

    [Parameter, EditorRequired]
    public ImportPreview Preview { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Name { get; set; } = "";

    [Parameter]
    public bool IsBusy { get; set; }

    /// <summary>The person takes in what is shown.</summary>
    [Parameter, EditorRequired]
    public EventCallback Accepted { get; set; }

    [Inject]
    private ShopSite Site { get; set; } = null!;
}

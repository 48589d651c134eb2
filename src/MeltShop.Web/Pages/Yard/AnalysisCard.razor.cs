using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>The analysis in force, and the way to correct it.</summary>
public sealed partial class AnalysisCard
{
    private bool isOpen;
    private bool isSaved;

    [Parameter, EditorRequired]
    public MaterialView Material { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private ShopSite Site { get; set; } = null!;

    private void Open() => (isOpen, isSaved) = (true, false);

    private void Close() => (isOpen, isSaved) = (false, true);

    private void Leave() => isOpen = false;
}

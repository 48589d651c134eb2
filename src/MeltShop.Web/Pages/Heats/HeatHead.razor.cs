using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>What the heat is, and a way to put that right.</summary>
public sealed partial class HeatHead
{
    private bool isOpen;

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    /// <summary>Whether grade and start can be put right from here.</summary>
    [Parameter]
    public bool MayCorrect { get; set; }

    [Inject]
    private ShopSite Site { get; set; } = null!;

    private void Open() => isOpen = true;

    private void Close() => isOpen = false;
}

using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>A prepared ladle that will not be tapped. It cannot be undone, so it is asked once more, with the reason.</summary>
public sealed partial class AbandonForm
{
    private readonly AbandonEntry entry = new();
    private bool isOpen;

    [Parameter, EditorRequired]
    public TreatedLadleView Treated { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    protected override void OnParametersSet()
    {
        entry.Belongs("treatedLadleId", Treated.Id);
        entry.Belongs("version", Treated.Version);
    }
}

using MeltShop.Operations.Ladles;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Takes an entry back, with the reason; it stays readable.</summary>
public sealed partial class TakeBackForm
{
    private readonly TakeBackEntry entry = new();
    private bool isOpen;

    [Parameter, EditorRequired]
    public LadleEntryKind Kind { get; set; }

    [Parameter, EditorRequired]
    public long FactId { get; set; }

    protected override void OnParametersSet()
    {
        entry.Belongs("kind", Kind);
        entry.Belongs("factId", FactId);
    }
}

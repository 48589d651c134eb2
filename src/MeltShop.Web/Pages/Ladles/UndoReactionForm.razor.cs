using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>The button for the end of the reaction was pressed too early, or at the wrong ladle.</summary>
public sealed partial class UndoReactionForm
{
    private readonly UndoReactionEntry entry = new();
    private bool isOpen;

    [Parameter, EditorRequired]
    public TreatedLadleView Treated { get; set; } = null!;

    protected override void OnParametersSet()
    {
        entry.Belongs("treatedLadleId", Treated.Id);
        entry.Belongs("version", Treated.Version);
    }
}

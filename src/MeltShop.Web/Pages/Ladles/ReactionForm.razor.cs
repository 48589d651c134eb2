using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>One large button at the end of the flare.</summary>
public sealed partial class ReactionForm
{
    private readonly ReactionEntry entry = new();

    [Parameter, EditorRequired]
    public TreatedLadleView Treated { get; set; } = null!;

    /// <summary>Moulds were poured already: then it ended before the first of them.</summary>
    [Parameter]
    public bool HasPoured { get; set; }

    protected override void OnParametersSet()
    {
        entry.Belongs("treatedLadleId", Treated.Id);
        entry.Belongs("version", Treated.Version);
    }
}

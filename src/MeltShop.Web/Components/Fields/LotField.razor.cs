using MeltShop.Records.Reading.Yard;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>The lot that something was taken from: one of those that lie in the yard by a press, or another one as it stands on the bag.</summary>
public sealed partial class LotField
{
    /// <summary>Presses for so many; older lots go first.</summary>
    private const int Most = 4;

    [Parameter, EditorRequired]
    public TextEntry Entry { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>Lots of the material that was chosen; null where none is.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<LotView>? Lots { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    private IReadOnlyList<LotView> There => [.. (Lots ?? []).Where(lot => lot.IsThere).Take(Most)];

    /// <summary>Lots that lie there and have no press.</summary>
    private int Others => (Lots ?? []).Count(lot => lot.IsThere) - There.Count;

    private bool IsUnknown => Entry.Value is not null && Lots?.Count > 0 && !Lots.Any(IsChosen);

    private bool IsChosen(LotView lot) => string.Equals(lot.Name, Entry.Value, StringComparison.OrdinalIgnoreCase);

    private Task Choose(LotView lot)
    {
        Entry.Text = lot.Name;
        return Changed.InvokeAsync();
    }
}

using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Recall;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Recalls;

/// <summary>The ladles of a recall with what was cast of them, where it stands, and why it is on the list.</summary>
public sealed partial class RecallTable
{
    [Parameter, EditorRequired]
    public IReadOnlyList<RecallRow> Rows { get; set; } = [];

    // Scrap is held for ever; the reader of this list wants to know which of the two it is.
    private static string StateKey(RecallRow row) => row.Ladle.Decision?.Verdict switch
    {
        CastingVerdict.Scrap => "State.Scrapped",
        _ when row.Ladle.State == TreatedLadleState.Released => "State.Released",
        _ => "State.Held",
    };
}

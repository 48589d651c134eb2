using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.History;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.History;

/// <summary>The heats of one page; only castings that wait for a decision are coloured.</summary>
public sealed partial class HistoryTable
{
    [Parameter, EditorRequired]
    public IReadOnlyList<HistoryRow> Rows { get; set; } = [];

    /// <summary>A number was looked for: its order is that of the rows.</summary>
    [Parameter]
    public bool IsByNumber { get; set; }

    private static string Tag(TreatedLadleState state) => state == TreatedLadleState.Held ? "tag tag-watch" : "tag";
}

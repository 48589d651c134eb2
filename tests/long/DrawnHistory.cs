using MeltShop.Records.Reading.History;
using MeltShop.Web.Pages.History;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace MeltShop.Long;

/// <summary>A page of the history as a circuit reads and draws it: what the page's table makes of the fifty heats before a place.</summary>
public sealed class DrawnHistory : ComponentBase
{
    private HistoryView? view;

    /// <summary>Where the page starts; the renderer of a measurement passes no parameters.</summary>
    public static HistoryPlace Place { get; set; } = new(DateTimeOffset.MaxValue, long.MaxValue);

    [Inject]
    private HistoryPage Page { get; set; } = null!;

    protected override async Task OnInitializedAsync() => view = await Page.Load(new(), Place);

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        if (view is null) return;
        builder.OpenComponent<HistoryTable>(0);
        builder.AddComponentParameter(1, nameof(HistoryTable.Rows), view.Rows);
        builder.CloseComponent();
    }
}

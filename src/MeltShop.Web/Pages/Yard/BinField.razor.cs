using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>A bin of the yard: one that the shop has named already by a press, or another one.</summary>
public sealed partial class BinField
{
    /// <summary>More than this is typed faster than found.</summary>
    private const int Most = 12;

    private IReadOnlyList<string> bins = [];

    [Parameter, EditorRequired]
    public TextEntry Entry { get; set; } = null!;

    [Parameter]
    public bool TakesFocus { get; set; }

    [Inject]
    private YardPage Page { get; set; } = null!;

    protected override async Task OnInitializedAsync()
    {
        var known = await Page.Bins(CancellationToken.None);
        bins = known.Count > Most ? [] : known;
    }
}

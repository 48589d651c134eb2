using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>The pocket card as it was made, and the mass really tapped beside it.</summary>
public sealed partial class LadleCard
{
    [Parameter, EditorRequired]
    public TreatedLadleView Treated { get; set; } = null!;

    /// <summary>Grey iron has no pocket.</summary>
    [Parameter]
    public bool IsGrey { get; set; }

    private string Lot(string? lot) => lot is null ? "" : Text["LotOf", lot];
}

using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>The usual cautions at a ladle; those of the magnesium only where there is any, so that the others are read.</summary>
public sealed partial class LadleCautions
{
    private static readonly string[] Treated = ["Flare", "Damp", "Hoist", "Freeboard", "Fire", "PouredBack", "Carbide", "Decides"];
    private static readonly string[] Grey = ["DampGrey", "Freeboard", "LeftOver", "Carbide", "Decides"];

    /// <summary>Grey iron: no magnesium goes into the ladle.</summary>
    [Parameter]
    public bool IsGrey { get; set; }
}

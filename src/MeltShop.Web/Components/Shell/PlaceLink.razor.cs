using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Shell;

/// <summary>A link of the rail.</summary>
public sealed partial class PlaceLink
{
    /// <summary>Where it leads.</summary>
    [Parameter, EditorRequired]
    public Place Place { get; set; } = null!;
}

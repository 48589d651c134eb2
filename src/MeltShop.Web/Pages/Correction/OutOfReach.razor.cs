using MeltShop.Charging.Plans;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Correction;

/// <summary>No addition brings the bath into its window: what clashes, and how near each gets.</summary>
public sealed partial class OutOfReach
{
    [Parameter, EditorRequired]
    public IReadOnlyList<Conflict> Conflicts { get; set; } = [];
}

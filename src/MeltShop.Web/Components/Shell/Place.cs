using Microsoft.AspNetCore.Components.Routing;
using MudBlazor;

namespace MeltShop.Web.Components.Shell;

/// <summary>An entry of the navigation: one task each.</summary>
/// <param name="Address">Where it leads.</param>
/// <param name="Word">Key of its word in the texts.</param>
/// <param name="Icon">Its mark.</param>
public sealed record Place(string Address, string Word, string Icon)
{
    public static IReadOnlyList<Place> All { get; } =
    [
        new("/", "Floor", Icons.Material.Filled.ViewAgenda),
        new("/charge", "Charge", Icons.Material.Filled.Balance),
        new("/history", "Heats", Icons.Material.Filled.ListAlt),
        new("/yard", "Yard", Icons.Material.Filled.Inventory2),
        new("/grades", "Grades", Icons.Material.Filled.Rule),
    ];

    public NavLinkMatch Match => Address == "/" ? NavLinkMatch.All : NavLinkMatch.Prefix;
}

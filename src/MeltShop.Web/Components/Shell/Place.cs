using MeltShop.Records.People;
using MeltShop.Records.Reading.Trail;
using Microsoft.AspNetCore.Components.Routing;
using MudBlazor;

namespace MeltShop.Web.Components.Shell;

/// <summary>An entry of the navigation: one task each.</summary>
/// <param name="Address">Where it leads.</param>
/// <param name="Word">Key of its word in the texts.</param>
/// <param name="Icon">Its mark.</param>
/// <param name="Daily">Roles whose daily work it is; the others find it under "More".</param>
public sealed record Place(string Address, string Word, string Icon, params IReadOnlyList<string> Daily)
{
    /// <summary>So many, search and "More" fit on a tablet that lies on its side, with who is signed in below them.</summary>
    private const int MostDaily = 7;

    /// <summary>So many, search and "More" are wide enough for a finger on a phone, with room between them.</summary>
    private const int MostOnAPhone = 3;

    public static IReadOnlyList<Place> All { get; } =
    [
        new("/", "Floor", Icons.Material.Filled.ViewAgenda, [.. Role.All]) { OwnOf = Role.All },
        new("/charge", "Charge", Icons.Material.Filled.Balance, Role.Melter, Role.Metallurgist) { OwnOf = [Role.Melter] },
        new("/history", "Heats", Icons.Material.Filled.ListAlt, Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector),
        new("/laboratory", "Laboratory", Icons.Material.Filled.Science, Role.Metallurgist, Role.Inspector) { OwnOf = [Role.Metallurgist, Role.Inspector] },
        new("/yard", "Yard", Icons.Material.Filled.Inventory2, Role.Metallurgist, Role.Supervisor),
        new("/grades", "Grades", Icons.Material.Filled.Rule, Role.Metallurgist, Role.Inspector),
        new("/equipment", "Equipment", Icons.Material.Filled.LocalDrink, Role.Metallurgist),
        new("/orders", "Orders", Icons.Material.Filled.Assignment, Role.Supervisor) { OwnOf = [Role.Supervisor] },
        new("/recall", "Recall", Icons.Material.Filled.AssignmentReturn, Role.Supervisor),
        new("/import", "Import", Icons.Material.Filled.UploadFile),
        new("/shop", "Shop", Icons.Material.Filled.Storefront, Role.Administrator) { SeenBy = [Role.Administrator], OwnOf = [Role.Administrator] },
        new("/people", "People", Icons.Material.Filled.People, Role.Administrator) { SeenBy = [Role.Administrator] },
        new("/trail", "Trail", Icons.Material.Filled.Link, Role.Inspector, Role.Administrator) { SeenBy = TrailPage.Roles },
    ];

    /// <summary>Roles that may open it; null: everybody.</summary>
    public IReadOnlyList<string>? SeenBy { get; init; }

    /// <summary>Roles whose own room it is: there they begin, and have it at hand on a phone too.</summary>
    public IReadOnlyList<string> OwnOf { get; init; } = [];

    public NavLinkMatch Match => Address == "/" ? NavLinkMatch.All : NavLinkMatch.Prefix;

    /// <summary>What somebody with these roles may open: the daily work, and the rest. Without a role all of it is at hand.</summary>
    public static (IReadOnlyList<Place> Daily, IReadOnlyList<Place> More) For(IReadOnlyCollection<string> roles)
    {
        var seen = All.Where(place => place.SeenBy is null || place.SeenBy.Any(roles.Contains)).ToList();
        if (roles.Count == 0) return (seen, []);
        var daily = seen.Where(place => place.Daily.Any(roles.Contains)).Take(MostDaily).ToList();
        return (daily, [.. seen.Except(daily)]);
    }

    /// <summary>Daily work for which a phone has no room: the roles' own rooms stay at hand, then what comes first.</summary>
    public static IReadOnlyList<Place> Behind(IReadOnlyList<Place> daily, IReadOnlyCollection<string> roles) =>
        [.. daily.Except(daily.OrderByDescending(place => place.OwnOf.Any(roles.Contains)).Take(MostOnAPhone))];
}

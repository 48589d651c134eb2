using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Shell;

/// <summary>Where somebody can go: the daily work of the person's roles, and the rest behind one press.</summary>
public sealed partial class Places
{
    private IReadOnlyList<Place> daily = [];
    private IReadOnlyList<Place> more = [];

    /// <summary>Daily work for which a phone has no room beside the others: there it stands behind the press.</summary>
    private IReadOnlyList<Place> behind = [];

    [Parameter, EditorRequired]
    public IReadOnlyCollection<string> Roles { get; set; } = [];

    protected override void OnParametersSet()
    {
        (daily, more) = Place.For(Roles);
        behind = Place.Behind(daily, Roles);
    }
}

using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Shell;

/// <summary>Where somebody can go: the daily work of the person's roles, and the rest behind one press.</summary>
public sealed partial class Places
{
    private IReadOnlyList<Place> daily = [];
    private IReadOnlyList<Place> more = [];

    [Parameter, EditorRequired]
    public IReadOnlyCollection<string> Roles { get; set; } = [];

    protected override void OnParametersSet() => (daily, more) = Place.For(Roles);
}

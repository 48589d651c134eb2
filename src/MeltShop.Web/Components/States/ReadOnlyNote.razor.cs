using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.States;

/// <summary>Tells a person who may only read who may change things here.</summary>
public sealed partial class ReadOnlyNote
{
    /// <summary>The roles of the operation that changes things.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<string> Roles { get; set; } = [];

    /// <summary>ReadOnlyTry where a calculation is for everybody, ReadOnlyNone where a page has nothing but its form.</summary>
    [Parameter]
    public string Words { get; set; } = "ReadOnly";
}

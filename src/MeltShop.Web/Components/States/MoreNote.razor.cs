using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.States;

/// <summary>Says that a long list was cut, and how to see the rest.</summary>
public sealed partial class MoreNote
{
    [Parameter, EditorRequired]
    public bool IsMore { get; set; }

    [Parameter, EditorRequired]
    public int Shown { get; set; }

    /// <summary>How long the whole list is; null where nobody counted it, and it is longer than what is shown.</summary>
    [Parameter]
    public int? Total { get; set; }

    /// <summary>Whether the list can be narrowed where it stands.</summary>
    [Parameter]
    public bool HasSearch { get; set; } = true;
}

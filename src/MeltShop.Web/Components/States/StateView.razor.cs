using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.States;

/// <summary>The states of a page's content, the same on every page: loading, empty, missing, failed, or there.</summary>
public sealed partial class StateView
{
    [Parameter, EditorRequired]
    public ViewState State { get; set; }

    /// <summary>What is shown could not be read again: that is said above it, and it stays.</summary>
    [Parameter, EditorRequired]
    public bool IsOld { get; set; }

    /// <summary>When what is shown was read, as words; null hides it.</summary>
    [Parameter]
    public string? AsOf { get; set; }

    /// <summary>The page has no heading beside what is read: a state that hides it brings one.</summary>
    [Parameter]
    public bool IsPage { get; set; }

    /// <summary>What to do when there is nothing yet.</summary>
    [Parameter]
    public RenderFragment? Empty { get; set; }

    [Parameter, EditorRequired]
    public RenderFragment? ChildContent { get; set; }

    /// <summary>Load again after a failure.</summary>
    [Parameter]
    public EventCallback Again { get; set; }
}

using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Ends a search that takes long, and begins it again.</summary>
public sealed partial class StopPlanning
{
    [Parameter, EditorRequired]
    public bool IsWorking { get; set; }

    /// <summary>A person ended it.</summary>
    [Parameter]
    public bool IsStopped { get; set; }

    [Parameter, EditorRequired]
    public EventCallback Stop { get; set; }

    [Parameter]
    public EventCallback Again { get; set; }
}

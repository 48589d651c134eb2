using MeltShop.Operations.Correcting;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Correction;

/// <summary>Which other grades this bath meets, or meets after a correction of its own.</summary>
public sealed partial class OtherGrades
{
    /// <summary>Null until somebody looked.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<OtherGrade>? Found { get; set; }

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    [Parameter]
    public bool IsWorking { get; set; }

    [Parameter, EditorRequired]
    public EventCallback Look { get; set; }
}

using MeltShop.Charging.Plans;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Correction;

/// <summary>No correction was found, and nobody has shown that there is none: why, and the additions as if pieces could be cut.</summary>
public sealed partial class CorrectionNotFound
{
    [Parameter, EditorRequired]
    public ChargePlan Plan { get; set; } = null!;

    [Parameter, EditorRequired]
    public Func<string, string> NameOf { get; set; } = null!;

    /// <summary>Looks once more.</summary>
    [Parameter, EditorRequired]
    public EventCallback Again { get; set; }
}

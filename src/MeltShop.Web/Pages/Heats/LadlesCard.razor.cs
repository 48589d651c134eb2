using MeltShop.Records.Reading.Heats;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The ladles of the heat; each has a page of its own.</summary>
public sealed partial class LadlesCard
{
    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }
}

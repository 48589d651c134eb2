using MeltShop.Records.Reading.Floor;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Floor;

/// <summary>Ladles that are prepared, react or pour, each with its clock.</summary>
public sealed partial class OpenLadles
{
    [Parameter, EditorRequired]
    public IReadOnlyList<FloorLadle> Ladles { get; set; } = [];

    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }
}

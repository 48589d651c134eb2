using MeltShop.Records.Reading.Orders;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Orders;

/// <summary>The metal that the open orders need, by day and grade.</summary>
public sealed partial class NeededTable
{
    [Parameter, EditorRequired]
    public IReadOnlyList<MetalNeeded> Needed { get; set; } = [];

    [Parameter, EditorRequired]
    public DateOnly Today { get; set; }
}

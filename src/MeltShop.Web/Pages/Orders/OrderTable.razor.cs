using MeltShop.Records.Reading.Orders;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Orders;

/// <summary>The orders, a line each.</summary>
public sealed partial class OrderTable
{
    [Parameter, EditorRequired]
    public IReadOnlyList<OrderView> Orders { get; set; } = [];

    [Parameter, EditorRequired]
    public DateOnly Today { get; set; }
}

using MeltShop.Records.Reading.Orders;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Orders;

/// <summary>How an order stands, where that is worth a word; only a late one is coloured.</summary>
public sealed partial class OrderTag
{
    [Parameter, EditorRequired]
    public OrderView Order { get; set; } = null!;

    [Parameter, EditorRequired]
    public DateOnly Today { get; set; }
}

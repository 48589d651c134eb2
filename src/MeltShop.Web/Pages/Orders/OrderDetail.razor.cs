using MeltShop.Operations.Orders;
using MeltShop.Records.Reading.Orders;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Orders;

/// <summary>One order: what it asks for, what is poured of it, and what it still needs.</summary>
public sealed partial class OrderDetail
{
    [Parameter]
    public long Id { get; set; }

    [Inject]
    private OrdersPage Page { get; set; } = null!;

    [Inject]
    private CountPieces Counting { get; set; } = null!;

    [Inject]
    private SetOrder Setting { get; set; } = null!;

    [Inject]
    private CloseOrder Closing { get; set; } = null!;

    protected override Task<OrderPageView?> Read(CancellationToken ct) => Page.Order(Id, ct);

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Order or ChangeKind.Grade;
}

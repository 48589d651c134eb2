using MeltShop.Operations.Orders;
using MeltShop.Records.Reading.Orders;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.History;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Orders;

/// <summary>The orders with the metal that they need and the heats that give it; filter and furnace stay in the address.</summary>
public sealed partial class OrderList
{
    private const string Closed = "closed";

    private readonly TextEntry which, until, furnace;

    public OrderList()
    {
        var form = new EntryForm();
        (which, until, furnace) = (form.Choice("show"), form.Words("until"), form.Choice("furnace"));
    }

    [Inject]
    private OrdersPage Page { get; set; } = null!;

    [Inject]
    private TakeOrder Taking { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "show")]
    public string? WhichInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "until")]
    public string? UntilInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "furnace")]
    public string? FurnaceInAddress { get; set; }

    private IEnumerable<Choice> Whiches => [new(Closed, Text["Which.Closed"])];

    private DateOnly Today => Site.DayOf(Clock.GetUtcNow());

    private OrderFilter InAddress => new(WhichInAddress == Closed, HistoryAddress.ReadDay(UntilInAddress));

    protected override async Task<OrdersView?> Read(CancellationToken ct)
    {
        which.Showing(InAddress.IsClosed ? Closed : null);
        until.Showing(InAddress.Until is null ? null : UntilInAddress);
        furnace.Showing(FurnaceInAddress);
        return await Page.Load(InAddress, ct);
    }

    protected override bool IsEmpty(OrdersView view) => view.Orders.Count == 0 && InAddress == new OrderFilter();

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Order or ChangeKind.Grade or ChangeKind.Furnace or ChangeKind.Heat;

    private void Filter() => Addresses.NavigateTo(Addresses.GetUriWithQueryParameters(
        new Dictionary<string, object?> { ["show"] = which.Value, ["until"] = until.Value, ["furnace"] = furnace.Value }));
}

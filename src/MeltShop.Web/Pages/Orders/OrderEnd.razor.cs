using MeltShop.Operations.Orders;
using MeltShop.Records.Orders;
using MeltShop.Records.Reading.Orders;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Orders;

/// <summary>Closes an order, and opens it again where that was too soon.</summary>
public sealed partial class OrderEnd
{
    private readonly EntryForm form = new();

    [Parameter, EditorRequired]
    public OrderView Order { get; set; } = null!;

    [Parameter]
    public EventCallback Saved { get; set; }

    [Inject]
    private CloseOrder Closing { get; set; } = null!;

    [Inject]
    private ReopenOrder Reopening { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private async Task Close(OrderState state)
    {
        form.Open();
        await HandingIn.Send(form, made => Closing.Run(made.By, new(made.Key, made.ObservedAt, Order.Id, Order.Version, state)));
        await Saved.InvokeAsync();
    }

    private async Task OpenAgain()
    {
        form.Open();
        await HandingIn.Send(form, made => Reopening.Run(made.By, new(made.Key, made.ObservedAt, Order.Id, Order.Version)));
        await Saved.InvokeAsync();
    }
}

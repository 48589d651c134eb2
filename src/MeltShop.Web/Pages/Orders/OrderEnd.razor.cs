using MeltShop.Operations;
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
    private readonly Drawn<Guid> done, withdrawn, again;
    private Guid answered;

    public OrderEnd()
    {
        done = new(version => Close(OrderState.Done, version));
        withdrawn = new(version => Close(OrderState.Withdrawn, version));
        again = new(OpenAgain);
    }

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

    private Task Close(OrderState state, Guid version) =>
        Save(version, made => Closing.Run(made.By, new(made.Key, made.ObservedAt, Order.Id, version, state)));

    private Task OpenAgain(Guid version) =>
        Save(version, made => Reopening.Run(made.By, new(made.Key, made.ObservedAt, Order.Id, version)));

    private async Task Save<TResult>(Guid version, Func<EntryMade, Task<Outcome<TResult>>> run)
    {
        if (form.IsBusy || version == answered) return; // pressed once more before the answer was shown
        form.Open();
        var outcome = await HandingIn.Send(form, run);
        if (outcome?.Succeeded == true) answered = version;
        await Saved.InvokeAsync();
    }
}

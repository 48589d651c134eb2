using MeltShop.Operations.Orders;
using MeltShop.Records.Reading.Orders;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Orders;

/// <summary>Says how many castings of an order are poured so far.</summary>
public sealed partial class CountForm
{
    private const double MostPieces = 1_000_000;

    private readonly EntryForm form = new();
    private readonly QuantityEntry poured;
    private readonly SeenVersion seen = new();
    private bool isOpen;

    public CountForm() => poured = form.Quantity("piecesPoured", 0, MostPieces, isRequired: true);

    [Parameter, EditorRequired]
    public OrderView Order { get; set; } = null!;

    [Parameter]
    public EventCallback Saved { get; set; }

    [Inject]
    private CountPieces Counting { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    protected override void OnParametersSet() => seen.Arrived(Order.Version);

    private void Open()
    {
        isOpen = true;
        form.Open();
        seen.Open(Order.Version);
        poured.Showing(Order.PiecesPoured);
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(
            form, made => Counting.Run(made.By, new(made.Key, made.ObservedAt, Order.Id, seen.Value, (int)poured.Needed)), () => WholePieces.Check(poured));
        if (outcome?.IsStale() == true) seen.Outdated();
        if (outcome?.Succeeded == true) isOpen = false;
        await Saved.InvokeAsync();
    }
}

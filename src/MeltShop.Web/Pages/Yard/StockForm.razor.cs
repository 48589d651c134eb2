using MeltShop.Operations.Yard;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>A delivery, or a count of what lies there.</summary>
public sealed partial class StockForm
{
    /// <summary>No bay of a jobbing foundry holds more than this of one material, kg: beyond it somebody mistyped.</summary>
    private const double MostKg = 10_000_000;

    private readonly EntryForm form = new();
    private readonly TextEntry kind;
    private readonly TextEntry lot, bin;
    private readonly QuantityEntry kg;
    private bool isOpen;

    public StockForm()
    {
        kind = form.Choice("kind", isRequired: true);
        kg = form.Mass("kg", 0, MostKg, isRequired: true);
        (lot, bin) = (form.Words("lot"), form.Words("bin"));
    }

    [Parameter, EditorRequired]
    public MaterialView Material { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    /// <summary>The stock is another now: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private BookStock Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Kinds =>
        [new(nameof(StockKind.Received), Text["Received"]), new(nameof(StockKind.Counted), Text["Counted"])];

    /// <summary>Those to be counted; a delivery is usually a new one.</summary>
    private IReadOnlyList<LotView>? Known => kind.Value == nameof(StockKind.Counted) ? Material.Lots : null;

    private void Open()
    {
        isOpen = true;
        kind.Showing(nameof(StockKind.Received));
        kg.Showing(null);
        lot.Showing(null);
        bin.Showing(null);
        form.Open();
    }

    private void Close() => isOpen = false;

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(
            made.By, new(made.Key, made.ObservedAt, Material.Id, Enum.Parse<StockKind>(kind.Value!), kg.Needed) { Lot = lot.Value, Bin = bin.Value }));
        if (outcome?.Succeeded != true) return;
        isOpen = false;
        await Changed.InvokeAsync();
    }
}

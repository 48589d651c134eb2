using MeltShop.Operations.Yard;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>
/// A new price for a material. If somebody else was faster, that is said, their price is shown beside, and what was typed stays:
/// saving again then replaces theirs knowingly.
/// </summary>
public sealed partial class PriceForm
{
    private readonly EntryForm form = new();
    private readonly QuantityEntry price;
    private bool isOpen;
    private readonly SeenVersion seen = new();
    private decimal opened;

    public PriceForm() => price = form.PerTonne("pricePerTonne", -1e6, 1e6, isRequired: true);

    [Parameter, EditorRequired]
    public MaterialView Material { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Unit { get; set; } = "";

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    /// <summary>The price is another now: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private ChangePrice Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    protected override void OnParametersSet() => seen.Arrived(Material.Version);

    private void Open()
    {
        (opened, isOpen) = (Material.PricePerTonne, true);
        seen.Open(Material.Version);
        price.Showing((double)Material.PricePerTonne);
        form.Open();
    }

    private void Close() => isOpen = false;

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(
            made.By, new(made.Key, made.ObservedAt, Material.Id, seen.Value, PriceText.Recorded(price)!.Value)), () => PriceText.Check(price));
        if (outcome is null) return;
        if (outcome.IsStale()) seen.Outdated();
        else isOpen = !outcome.Succeeded;
        await Changed.InvokeAsync();
    }
}

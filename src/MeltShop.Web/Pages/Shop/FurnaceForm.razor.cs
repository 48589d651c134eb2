using MeltShop.Operations;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Sites;
using MeltShop.Records.Reading.Sites;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Shop;

/// <summary>Takes a furnace into the shop, or says its name and figures anew.</summary>
public sealed partial class FurnaceForm
{
    private const double MostKg = 200_000, MostKw = 100_000;

    private readonly EntryForm form = new();
    private readonly TextEntry code, name, use;
    private readonly QuantityEntry capacity, power, highest;
    private readonly SeenVersion seen = new();
    private bool isOpen;

    public FurnaceForm()
    {
        (code, name, use) = (form.Words("code"), form.Words("name", isRequired: true), form.Choice("isActive", isRequired: true).Showing(bool.TrueString));
        capacity = form.Mass("capacityKg", 0, MostKg, isRequired: true);
        power = form.Quantity("powerKw", 0, MostKw, isRequired: true);
        highest = form.Temperature("highestC", FieldCheck.LowestC, FieldCheck.HighestC);
    }

    /// <summary>The one to be said anew; null for a new one.</summary>
    [Parameter]
    public FurnaceFigures? Furnace { get; set; }

    [Parameter]
    public EventCallback Saved { get; set; }

    [Inject]
    private AddFurnace Add { get; set; } = null!;

    [Inject]
    private SetFurnace Set { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Uses => [new(bool.TrueString, Text["InUse"]), new(bool.FalseString, Text["OutOfUse"])];

    protected override void OnParametersSet()
    {
        if (Furnace is { } furnace) seen.Arrived(furnace.Version);
    }

    private void Open()
    {
        isOpen = true;
        form.Open();
        seen.Open(Furnace?.Version ?? Guid.Empty);
        code.Showing(null);
        name.Showing(Furnace?.Name);
        capacity.Showing(Furnace?.CapacityKg);
        power.Showing(Furnace?.PowerKw);
        highest.Showing(Furnace?.HighestC);
        use.Showing((Furnace?.IsActive ?? true).ToString());
    }

    private async Task Save()
    {
        var done = Furnace is { } furnace
            ? Done(await HandingIn.Send(form, made => Set.Run(made.By, new(
                made.Key, made.ObservedAt, furnace.Id, seen.Value, name.Value!, capacity.Needed, power.Needed, highest.Value, bool.Parse(use.Value!)))))
            : Done(await HandingIn.Send(form, made => Add.Run(made.By, new(
                made.Key, made.ObservedAt, code.Value ?? "", name.Value!, capacity.Needed, power.Needed, highest.Value))));
        if (done) isOpen = false;
        await Saved.InvokeAsync();
    }

    private bool Done<TResult>(Outcome<TResult>? outcome)
    {
        if (outcome?.IsStale() == true) seen.Outdated();
        return outcome?.Succeeded == true;
    }
}

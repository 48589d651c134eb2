using MeltShop.Operations.Yard;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>The yield of a material of which nobody knew it.</summary>
public sealed partial class YieldForm
{
    private readonly EntryForm form = new();
    private readonly QuantityEntry yield;

    public YieldForm() => yield = form.Quantity("metallicYieldPercent", 0, 100, isRequired: true);

    [Parameter, EditorRequired]
    public MaterialView Material { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    /// <summary>The yield is known now: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private TellYield Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, Material.Id, yield.Needed)));
        if (outcome is not null) await Changed.InvokeAsync();
    }
}

using MeltShop.Operations.Yard;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>Says in which bin a lot lies from now on.</summary>
public sealed partial class MoveForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry bin;
    private bool isOpen;

    public MoveForm() => bin = form.Words("bin");

    [Parameter, EditorRequired]
    public MaterialView Material { get; set; } = null!;

    /// <summary>Null for what lies there outside of every lot.</summary>
    [Parameter]
    public string? Lot { get; set; }

    /// <summary>Where it lies now; null where nobody said.</summary>
    [Parameter]
    public string? Bin { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private MoveLot Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private void Open()
    {
        isOpen = true;
        form.Open();
        bin.Showing(Bin);
    }

    private void Close() => isOpen = false;

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, Material.Id, Lot, bin.Value)));
        if (outcome?.Succeeded != true) return;
        isOpen = false;
        await Changed.InvokeAsync();
    }
}

using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What a person wants otherwise for one material, for this charge only.</summary>
public sealed partial class MaterialChoices
{
    [Parameter, EditorRequired]
    public MaterialRow Row { get; set; } = null!;

    [Parameter, EditorRequired]
    public MaterialDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    [Parameter]
    public EventCallback Changed { get; set; }

    private Task LeaveOut(bool isTicked)
    {
        Draft.LeaveOut(isTicked);
        return Changed.InvokeAsync();
    }

    private Task Take(bool isTicked)
    {
        Draft.Take(isTicked);
        return Changed.InvokeAsync();
    }

    private Task Clear()
    {
        Draft.Clear();
        return Changed.InvokeAsync();
    }
}

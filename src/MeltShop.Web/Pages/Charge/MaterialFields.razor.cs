using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Price, masses and shares of one material for this charge, each beside what the yard says of it.</summary>
public sealed partial class MaterialFields
{
    [Parameter, EditorRequired]
    public MaterialView Material { get; set; } = null!;

    [Parameter, EditorRequired]
    public MaterialDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    [Parameter]
    public EventCallback Changed { get; set; }

    private string Stock => Material.StockKg is { } kg ? Text["Stock", MassText.Show(kg)] : Text["StockUnknown"];

    private string? Share => Material.MaxSharePercent is { } percent ? Text["Yard", NumberText.Show(percent)].Value : null;
}

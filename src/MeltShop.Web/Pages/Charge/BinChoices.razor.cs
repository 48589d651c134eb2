using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Bins that cannot be reached today: what lies in them counts as not there, for this charge.</summary>
public sealed partial class BinChoices
{
    [Parameter, EditorRequired]
    public ChargeView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>One that is left out stays to be taken back, whatever lies there now.</summary>
    private IReadOnlyList<string> Bins =>
        [.. View.Materials.SelectMany(material => material.Bins()).Concat(Draft.LeftOutBins).Distinct(StringComparer.OrdinalIgnoreCase).Order(NaturalOrder.Names)];

    private Task Turn(string bin)
    {
        if (!Draft.LeftOutBins.Remove(bin)) Draft.LeftOutBins.Add(bin);
        return Changed.InvokeAsync();
    }
}

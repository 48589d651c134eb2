using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Iron that is poured into pig moulds while the heat goes on.</summary>
public sealed partial class PigOutForm
{
    private readonly PigEntry entry = new();

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    protected override void OnParametersSet() => entry.Belongs("heatId", Heat.Heat.Id);
}

using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Sets the ledger right by a dipped level or a load cell, with how far that may be off.</summary>
public sealed partial class DipForm
{
    private readonly DipEntry entry = new();

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    protected override void OnParametersSet() => entry.Belongs("furnaceId", Heat.Heat.FurnaceId);
}

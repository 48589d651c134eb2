using System.Globalization;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Orders;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Orders;

/// <summary>Heats of a furnace that would give the metal of each grade, each a press away from its plan.</summary>
public sealed partial class HeatsTable
{
    /// <summary>By grade, over all days.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<MetalNeeded> Needed { get; set; } = [];

    [Parameter, EditorRequired]
    public IReadOnlyList<ChargeFurnaceView> Furnaces { get; set; } = [];

    /// <summary>Code of the furnace; empty, or one that is not there, is the first.</summary>
    [Parameter, EditorRequired]
    public TextEntry Entry { get; set; } = null!;

    [Parameter]
    public EventCallback Changed { get; set; }

    private ChargeFurnaceView? Furnace => Furnaces.FirstOrDefault(furnace => furnace.Code == Entry.Value) ?? (Furnaces is [{ } first, ..] ? first : null);

    private IEnumerable<Choice> Others => Furnaces.Skip(1).Select(furnace => new Choice(furnace.Code, furnace.Name));

    private IReadOnlyList<ProposedHeats> Proposed => [.. Needed.Select(needed => ProposedHeats.Of(needed, Furnace!)).OfType<ProposedHeats>()];

    private string Address(ProposedHeats heats) =>
        $"/charge?furnace={Uri.EscapeDataString(Furnace!.Code)}&grade={Uri.EscapeDataString(heats.Needed.GradeCode)}&kg={heats.MeltKg.ToString(CultureInfo.InvariantCulture)}";
}

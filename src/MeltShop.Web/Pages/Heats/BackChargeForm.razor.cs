using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Cold charge into the bath between two taps: anything that may be charged.</summary>
public sealed partial class BackChargeForm
{
    private readonly WeighingEntry entry = new();

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public IReadOnlyList<MaterialView> Yard { get; set; } = [];

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    private IEnumerable<Choice> Choices => Yard.Where(item => (item.Uses & (MaterialUses.Charge | MaterialUses.BathAddition)) != 0)
        .Select(item => new Choice(CorrectionDraft.Id(item.Id), item.Name));

    protected override void OnParametersSet()
    {
        entry.Belongs("heatId", Heat.Heat.Id);
        entry.Belongs("intoBath", 1);
    }
}

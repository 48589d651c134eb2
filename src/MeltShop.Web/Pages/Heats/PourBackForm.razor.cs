using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Liquid iron that goes back into the furnace: from a ladle of this heat, whose analysis is known, or other iron with the analysis typed here.</summary>
public sealed partial class PourBackForm
{
    private readonly PourBackEntry entry = new();

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    private IEnumerable<Choice> Choices => Heat.Ladles.Where(of => of.Tap is not null)
        .Select(of => new Choice(CorrectionDraft.Id(of.Id), Text["LadleOf", of.Ordinal])).Append(new("", Text["OtherIron"]));

    protected override void OnInitialized() => entry.Ladle.Showing(Heat.Ladles.LastOrDefault(of => of.Tap is not null) is { } last ? CorrectionDraft.Id(last.Id) : "");

    protected override void OnParametersSet() => entry.Belongs("heatId", Heat.Heat.Id);
}

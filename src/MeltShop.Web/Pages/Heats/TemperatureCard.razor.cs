using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Temperatures of the bath; those of a ladle stand with the ladle.</summary>
public sealed partial class TemperatureCard
{
    private readonly EntryForm form = new();
    private readonly QuantityEntry degrees;
    private readonly QuantityEntry minutes;

    public TemperatureCard()
    {
        degrees = form.Quantity("temperatureC", FieldCheck.LowestC, FieldCheck.HighestC, isRequired: true);
        minutes = MinutesAgo.Field(form);
    }

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Inject]
    private RecordTemperature Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IReadOnlyList<TemperatureView> Readings =>
        [.. Heat.Temperatures.Where(reading => reading.TreatedLadleId is null && !reading.Origin.IsCorrected).Reverse()];

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, minutes.Before(made.ObservedAt), Heat.Heat.Id, null, degrees.Needed)));
        if (outcome?.Succeeded != true) return;
        degrees.Showing(null);
        minutes.Showing(null);
    }
}

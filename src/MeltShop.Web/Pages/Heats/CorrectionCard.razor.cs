using MeltShop.Operations.Heats;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The last accepted correction as the melter's task: weighed in line by line, then its prediction beside the next sample.</summary>
public sealed partial class CorrectionCard
{
    private readonly EntryForm form = new();
    private readonly QuantityEntry kg;
    private string? opened;

    public CorrectionCard() => kg = form.Quantity("kg", 0, 1e6, isRequired: true);

    [Parameter, EditorRequired]
    public HeatScreen Screen { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Inject]
    private ShopSite Site { get; set; } = null!;

    [Inject]
    private WeighIn Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private CorrectionTask? Latest { get; set; }

    protected override void OnParametersSet() =>
        Latest = Screen.Heat.Corrections.LastOrDefault(c => !c.Origin.IsCorrected) is { } last ? CorrectionTask.Of(last, Screen.Heat, Screen.Yard) : null;

    private void Open(WeighingRow line)
    {
        opened = line.Code;
        kg.Showing(null);
        form.Open();
    }

    private void Leave() => opened = null;

    private async Task Save(WeighingRow line)
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Screen.Heat.Heat.Id, line.MaterialId!.Value, kg.Needed, IntoBath: true)));
        if (outcome?.Succeeded == true) opened = null;
    }
}

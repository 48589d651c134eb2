using System.Globalization;
using MeltShop.Operations.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Cold charge into the bath between two taps: anything that may be charged.</summary>
public sealed partial class BackChargeForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry material;
    private readonly QuantityEntry kg;

    public BackChargeForm()
    {
        material = form.Choice("materialId", isRequired: true);
        kg = form.Quantity("kg", 0.01, ChargeDraft.MostKg, isRequired: true);
    }

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public IReadOnlyList<MaterialView> Yard { get; set; } = [];

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    [Inject]
    private WeighIn Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Choices => Yard.Where(item => (item.Uses & (MaterialUses.Charge | MaterialUses.BathAddition)) != 0)
        .Select(item => new Choice(CorrectionDraft.Id(item.Id), item.Name));

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Heat.Heat.Id, long.Parse(material.Value!, CultureInfo.InvariantCulture), kg.Needed, true)));
        if (outcome?.Succeeded == true) await Done.InvokeAsync();
    }
}

using MeltShop.Operations.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Iron that is poured into pig moulds while the heat goes on.</summary>
public sealed partial class PigOutForm
{
    private readonly EntryForm form = new();
    private readonly QuantityEntry kg;
    private readonly TextEntry reason;

    public PigOutForm()
    {
        kg = form.Quantity("kg", 0.01, ChargeDraft.MostKg, isRequired: true);
        reason = form.Words("reason");
    }

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    [Inject]
    private PigOut Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, Heat.Heat.Id, kg.Needed, reason.Value)));
        if (outcome?.Succeeded == true) await Done.InvokeAsync();
    }
}

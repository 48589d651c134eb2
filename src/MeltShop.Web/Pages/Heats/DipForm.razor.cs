using MeltShop.Operations.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Sets the ledger right by a dipped level or a load cell, with how far that may be off.</summary>
public sealed partial class DipForm
{
    private readonly EntryForm form = new();
    private readonly QuantityEntry kg;
    private readonly QuantityEntry plusMinus;
    private readonly TextEntry reason;

    public DipForm()
    {
        kg = form.Quantity("kg", 0, ChargeDraft.MostKg, isRequired: true);
        plusMinus = form.Quantity("plusMinusKg", 0, ChargeDraft.MostKg);
        reason = form.Words("reason", isRequired: true);
    }

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    [Inject]
    private DipFurnace Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Heat.Heat.FurnaceId, kg.Needed, null, reason.Value!, plusMinus.Value)));
        if (outcome?.Succeeded == true) await Done.InvokeAsync();
    }
}

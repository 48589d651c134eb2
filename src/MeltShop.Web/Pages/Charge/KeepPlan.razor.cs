using System.Globalization;
using MeltShop.Charging.Problems;
using MeltShop.Operations.Charging;
using MeltShop.Records.Reading.Charge;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>
/// Keeps the plan that is shown, and starts a heat from it. A plan is kept once, however often one presses; when it changes it can be kept anew.
/// </summary>
public sealed partial class KeepPlan
{
    private (long PlanId, ChargeProblem Problem)? kept;

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public ChargeView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    /// <summary>The plan answers what is in the fields now.</summary>
    [Parameter, EditorRequired]
    public bool IsCurrent { get; set; }

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    /// <summary>It was kept, or refused with findings that stand elsewhere on the page.</summary>
    [Parameter]
    public EventCallback Answered { get; set; }

    [Inject]
    private PlanCharge Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private bool IsKept => kept is { } last && ReferenceEquals(last.Problem, Planned.Problem);

    private string Furnace => Draft.FurnaceIn(View)?.Name ?? "";

    private string Which => string.Join('|', Planned.Plan.Lines.Select(line => string.Create(CultureInfo.InvariantCulture, $"{line.Code} {line.Kg:0.###}"))
        .Prepend(string.Create(CultureInfo.InvariantCulture, $"{Furnace} {Draft.Grade.Text} {Planned.Plan.LiquidKg:0.###}")));

    private async Task Keep() => await KeepOnce();

    /// <summary>Number of the plan as it was when it was asked for, though a change of the yard may have drawn another meanwhile; null where it was refused.</summary>
    private async Task<long?> KeepOnce()
    {
        if (IsKept) return kept!.Value.PlanId;
        if (Draft.Choice(View) is not { } choice) return null;
        if (Draft.Form.IsAccepted) Draft.Form.Open();
        var problem = Planned.Problem;
        var outcome = await HandingIn.Send(Draft.Form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, choice)));
        if (outcome?.Succeeded == true) kept = (outcome.Value.PlanId, problem);
        await Answered.InvokeAsync();
        return outcome?.Succeeded == true ? outcome.Value.PlanId : null;
    }
}

using MeltShop.Charging.Problems;
using MeltShop.Operations.Correcting;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Correction;

/// <summary>What to add to a bath that is out of its window: proposed at once and again at every change, and made a task for the melter.</summary>
public sealed partial class CorrectionPlanning
{
    private readonly CorrectionDraft draft = new();
    private readonly Drawn<CorrectionProposal?> accept;
    private CorrectionProposal? proposal;
    private GradesInReach? others;
    private WaysIn ways = new([], []);
    private bool isCurrent;
    private bool isWorking;
    private bool isLooking;
    private int asked;
    private CancellationTokenSource? solving;

    public CorrectionPlanning() => accept = new(Accept);

    [Parameter]
    public long HeatId { get; set; }

    /// <summary>Codes of what is left out: a page that is loaded anew proposes none of it.</summary>
    [SupplyParameterFromQuery(Name = "without")]
    public string[]? LeftOutInAddress { get; set; }

    [Inject]
    private CorrectionPage Page { get; set; } = null!;

    [Inject]
    private CorrectionForecast Forecast { get; set; } = null!;

    [Inject]
    private AcceptCorrection Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    [Inject]
    private QuietAddress Address { get; set; } = null!;

    private IEnumerable<Choice> Goals => Enum.GetNames<CorrectionGoal>().Select(goal => new Choice(goal, Text["Goal." + goal]));

    private bool MayAccept => isCurrent && proposal is { IsReached: true, IsIdle: false } && !draft.Form.IsBusy && May(Operation.Roles);

    protected override async Task<CorrectionScreen?> Read(CancellationToken ct) =>
        await Page.Load(HeatId, ct) is { } view ? new CorrectionScreen(view, await Forecast.Facts(HeatId, ct)) : null;

    protected override bool IsEmpty(CorrectionScreen view) => view.Facts is null;

    protected override bool Concerns(ChangeNotice change) => change.Kind switch
    {
        ChangeKind.Heat => change.Id == HeatId,
        ChangeKind.Sample or ChangeKind.Material or ChangeKind.Grade or ChangeKind.Furnace or ChangeKind.Order or ChangeKind.Plan or ChangeKind.Instrument => true,
        _ => false,
    };

    protected override void Arrived(CorrectionScreen view)
    {
        draft.Fill(view.View.LastTemperatureC, view.View.NearnessPrice, (LeftOutInAddress ?? []).Intersect(view.View.Materials.Select(material => material.Code)));
        _ = InvokeAsync(Propose);
    }

    private async Task Propose()
    {
        GiveUp();
        var mine = ++asked;
        (isCurrent, others) = (false, null);
        if (View?.Facts is not { } facts || draft.Choice is not { } choice)
        {
            (proposal, isWorking) = (null, false);
            StateHasChanged();
            return;
        }

        var (problem, findings) = CorrectionQuestion.Build(facts, choice);
        draft.Form.Find(findings);
        isWorking = problem is not null;
        if (problem is null) proposal = null;
        StateHasChanged();
        if (problem is null) return;
        using var own = CancellationTokenSource.CreateLinkedTokenSource(Leaving);
        solving = own;
        try
        {
            var (found, barred) = await Task.Run(() => Answer(facts, choice, problem, own.Token), own.Token);
            if (mine != asked) return;
            (proposal, ways, isCurrent, isWorking) = (found, barred, true, false);
            StateHasChanged();
        }
        catch (OperationCanceledException) when (own.IsCancellationRequested)
        {
            // Another question has taken its place, or nobody looks any more.
        }
        finally
        {
            if (solving == own) solving = null;
        }
    }

    private void GiveUp()
    {
        solving?.Cancel();
        solving = null;
    }

    private static (CorrectionProposal Found, WaysIn Ways) Answer(CorrectionFacts facts, CorrectionChoice choice, CorrectionProblem problem, CancellationToken cancellation)
    {
        var found = CorrectionProposal.For(facts, choice, problem, cancellation);
        return (found, found.IsImpossible ? OutOfReachWay.Of(facts, choice, cancellation) : new([], []));
    }

    private async Task LookAtOthers()
    {
        if (View?.Facts is not { } facts || draft.Choice is not { } choice) return;
        isLooking = true;
        var mine = asked;
        var found = await Task.Run(() => OtherGrade.Of(facts, choice, Leaving), Leaving);
        isLooking = false;
        if (mine == asked) others = found;
    }

    private Task LeaveOut(string code)
    {
        draft.LeftOut.Add(code);
        return Say();
    }

    private Task TakeBack(string code)
    {
        draft.LeftOut.Remove(code);
        return Say();
    }

    private Task Say()
    {
        _ = Address.Say("without", [.. draft.LeftOut.Order(StringComparer.Ordinal)]);
        return Propose();
    }

    /// <summary>Of the proposal that stood there when it was pressed: the operation compares it with what the fields and the records say now.</summary>
    private async Task Accept(CorrectionProposal? shown)
    {
        if (shown is not { IsReached: true, IsIdle: false } || !May(Operation.Roles) || View?.Facts is not { } facts || draft.Choice is not { } choice) return;
        var seen = SeenCorrection.Of(shown);
        var outcome = await HandingIn.Send(draft.Form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, HeatId, facts.Bath.SampleId, choice, seen)));
        if (outcome?.Succeeded == true && !Leaving.IsCancellationRequested) Addresses.NavigateTo($"/heats/{HeatId}#correction");
    }
}

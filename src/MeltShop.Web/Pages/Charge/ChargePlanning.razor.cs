using System.Globalization;
using MeltShop.Charging.Plans;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>
/// Plans a charge: the plan is there at once, and again at every change of what was chosen or of the yard. All that was chosen
/// stands in the address.
/// </summary>
public sealed partial class ChargePlanning
{
    private readonly ChargeDraft draft = new();
    private LivePlan live = null!;
    private (string?, string?, string?) taken;
    private string? saidKg;
    private IReadOnlyList<string>? said;
    private bool hasFailed, isStopped;
    private IReadOnlyList<TargetRow> rows = [];

    [Inject]
    private ChargePage Page { get; set; } = null!;

    [Inject]
    private PlanCharge Plan { get; set; } = null!;

    [Inject]
    private AddMaterial Adding { get; set; } = null!;

    [Inject]
    private ILogger<ChargePlanning> Log { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "furnace")]
    public string? FurnaceInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "grade")]
    public string? GradeInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "kg")]
    public string? KgInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "wish")]
    public string[]? WishesInAddress { get; set; }

    [Inject]
    private QuietAddress Address { get; set; } = null!;

    /// <summary>The melter sees what to do; why is for the metallurgist, and a press away for everybody.</summary>
    private bool IsWhyShown => draft.IsWhyTurned ?? May([Role.Metallurgist, Role.Supervisor]);

    /// <summary>There is a plan to look at.</summary>
    private bool IsAnswered(ChargeView view) => live.Last is not null && draft.FurnaceIn(view) is not null && draft.GradeIn(view) is not null;

    /// <summary>All that a plan needs was chosen, and something of it is refused.</summary>
    private bool IsMarked(ChargeView view) => draft.FurnaceIn(view) is not null && draft.GradeIn(view) is not null && draft.Form.HasFindings;

    private string Age => live.IsWorking ? "Planning" : isStopped ? "PlanStopped" : !live.IsCurrent ? "PlanOld" : draft.ByHand is not null ? "PlanByHand" : live.Last switch
    {
        { Plan.Status: PlanStatus.Optimal } => "PlanCurrent",
        { IsReached: true } => "PlanBest",
        { IsImpossible: true } => "PlanNone",
        _ => "PlanUnknown",
    };

    /// <summary>A search that came to no end may come to one at another time.</summary>
    private bool IsAgainOffered => isStopped || (live is { IsCurrent: true, Last.Plan.Status: PlanStatus.TimeLimit } && draft.ByHand is null);

    protected override async Task<ChargeView?> Read(CancellationToken ct)
    {
        live ??= new LivePlan(Clock);
        var view = await Page.Load(ct);
        TakeFromAddress(view);
        return view;
    }

    protected override bool IsEmpty(ChargeView view) => view.Furnaces.Count == 0 || view.Grades.Count == 0 || view.Materials.Count == 0;

    /// <summary>Not of plans: to hear of the one that it keeps itself would draw another in its place.</summary>
    protected override bool Concerns(ChangeNotice change) =>
        change.Kind is ChangeKind.Material or ChangeKind.Grade or ChangeKind.Furnace or ChangeKind.Heat or ChangeKind.Ladle or ChangeKind.Site;

    protected override void Arrived(ChargeView view) => _ = InvokeAsync(Replan);

    /// <summary>The address is taken over only where it has changed: what is typed meanwhile stays.</summary>
    private void TakeFromAddress(ChargeView view)
    {
        if (said is null) ChargeAddress.Read(WishesInAddress ?? [], draft, view);
        said ??= WishesInAddress ?? [];
        var address = (FurnaceInAddress, GradeInAddress, KgInAddress);
        if (address == taken) return;
        taken = address;
        draft.Furnace.Showing(FurnaceInAddress);
        draft.Grade.Showing(GradeInAddress);
        saidKg = KgInAddress;
        if (double.TryParse(KgInAddress, NumberStyles.Float, CultureInfo.InvariantCulture, out var kg)) draft.MeltKg.Showing(kg);
        else draft.MeltKg.Text = KgInAddress ?? "";
        if (draft.FurnaceIn(view) is not { } furnace) return;
        draft.Furnace.Showing(furnace.Code);
        draft.OfferAFullFurnace(furnace);
    }

    /// <summary>What was typed, or what was said last while that cannot be read.</summary>
    private string? Kg => draft.MeltKg.Value is { } kg ? NumberText.Unmistakable(kg, CultureInfo.InvariantCulture) : saidKg;

    /// <summary>Without a navigation: one that is late on its line would pull back whoever has left meanwhile.</summary>
    private void Move()
    {
        saidKg = Kg;
        foreach (var (name, value) in new[] { ("furnace", draft.Furnace.Value), ("grade", draft.Grade.Value), ("kg", saidKg) })
        {
            _ = Address.Say(name, value is null ? [] : [value]);
        }
    }

    private void Say()
    {
        if (said is null || ChargeAddress.Write(draft) is not { } wishes || wishes.SequenceEqual(said)) return;
        said = wishes;
        _ = Address.Say("wish", wishes);
    }

    private void TurnWhy()
    {
        draft.IsWhyTurned = !IsWhyShown;
        Say();
    }

    /// <summary>The solve ends at once, that of whole pieces with its process.</summary>
    private void Stop()
    {
        live.Withdraw();
        isStopped = true;
    }

    private async Task Replan()
    {
        isStopped = false;
        if (View is not { } view || Leaving.IsCancellationRequested) return;
        Say();
        var choice = draft.Choice(view);
        var (problem, findings) = choice is null ? (null, draft.Standing(view)) : ChargeQuestion.Build(view, choice);
        draft.Form.Find(findings);
        if (problem is null)
        {
            live.Withdraw();
            StateHasChanged();
            return;
        }

        try
        {
            rows = ChargeQuestion.Rows(view, choice!);
            var asked = live.Ask(problem, choice!.ByHand);
            StateHasChanged();
            await asked;
            hasFailed = false;
        }
#pragma warning disable CA1031 // whatever kept it from being planned: the page says so, and the last plan stays marked as old
        catch (Exception fault)
#pragma warning restore CA1031
        {
            Log.LogError(fault, "A charge could not be planned");
            hasFailed = true;
        }

        StateHasChanged();
    }

    protected override void Dispose(bool disposing)
    {
        live?.Dispose();
        base.Dispose(disposing);
    }
}

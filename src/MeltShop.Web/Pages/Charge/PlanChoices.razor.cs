using MeltShop.Charging.Choosing;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Storing;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Heats;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Several plans for the metallurgist: cheapest, fewest materials, most returns, safest, as last time. One that is taken is checked and not changed.</summary>
public sealed partial class PlanChoices : IDisposable
{
    private readonly QuantityEntry dearer = new EntryForm().Quantity("mostDearerPercent", 0, 100).Showing(new ChoiceWishes().MostDearerPercent);

    /// <summary>Less of a material is what solving leaves over, kg.</summary>
    private const double LeftOverKg = 0.005;

    private Request<ChoiceOfPlans> request = null!;
    private ChargeProblem? answered;

    [Parameter, EditorRequired]
    public ChargeView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    /// <summary>Names of materials by code.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyDictionary<string, string> Names { get; set; } = new Dictionary<string, string>();

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private ChargePage Page { get; set; } = null!;

    [Inject]
    private ILogger<PlanChoices> Log { get; set; } = null!;

    public void Dispose() => request?.Dispose();

    protected override void OnInitialized() => request = new(Log);

    protected override void OnParametersSet()
    {
        if (ReferenceEquals(answered, Planned.Problem)) return;
        answered = Planned.Problem;
        request.Withdraw();
    }

    private async Task Ask()
    {
        if (dearer.Finding is not null) return;
        var problem = Planned.Problem;
        var last = Draft.GradeIn(View) is { } grade ? await LastKg(grade.Id) : null;
        var wishes = new ChoiceWishes
        {
            MostDearerPercent = dearer.Value ?? new ChoiceWishes().MostDearerPercent,
            Returns = [.. View.Materials.Where(item => item.Kind is MaterialKind.Returns).Select(item => item.Code)],
            LastTimeKg = last ?? new Dictionary<string, double>(),
            LeastKg = WeighingRow.LeastKg(problem.MeltKg),
        };
        var asked = request.Ask(ct => PlanChoice.Of(problem, wishes, ct));
        StateHasChanged();
        await asked;
        foreach (var plan in request.Answer?.Plans.Where(plan => plan.Fault is not null) ?? [])
            Log.LogError("The plan {Kind} could not be made: {Fault}", plan.Kind, plan.Fault);
    }

    /// <summary>What went in last time; the plan of it where nothing was weighed.</summary>
    private async Task<IReadOnlyDictionary<string, double>?> LastKg(long gradeId)
    {
        if (await Page.LastWeighed(gradeId) is { Count: > 0 } weighed) return weighed;
        return await Page.LastAnswer(gradeId) is { } answer ? StoredJson.Value<ChargePlan>(answer).Lines.ToDictionary(line => line.Code, line => line.Kg) : null;
    }

    private Task Take(PlanToChoose plan)
    {
        Draft.Make(new HandDraft(Draft.Form, plan.Charge!.Lines, plan.Kind));
        return Changed.InvokeAsync();
    }

    /// <summary>Why there is no charge: a fault of the program is no news of the yard.</summary>
    internal static string WhyNone(PlanToChoose plan) => plan.Fault is null ? "PlanNotFound" : "PlanFault";

    private static IEnumerable<PlanLine> Weighed(ChargeEvaluation charge) => charge.Lines.Where(line => line.Kg >= LeftOverKg).OrderByDescending(line => line.Kg);

    /// <summary>Names have commas in them: the mass stands before each.</summary>
    private string Lines(ChargeEvaluation charge) =>
        string.Join(" · ", Weighed(charge).Select(line => $"{MassText.Show(line.Kg)} {Names.GetValueOrDefault(line.Code, line.Code)}"));
}

using MeltShop.Metallurgy;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.WeighingIn;
using MeltShop.Charging.WhatIf;
using MeltShop.Charging;
using MeltShop.Operations.Charging;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What the metallurgist asks beside a plan: how often all limits hold, what if something runs out, what to buy, whether to drain the heel.</summary>
public sealed partial class WhatIfs : IDisposable
{
    private readonly EntryForm draining = new();
    private readonly QuantityEntry worth;
    private Request<JointProbability> joint = null!;
    private Request<RunOut> runOut = null!;
    private Request<WhatToBuy> buying = null!;
    private Request<HeelComparison> drained = null!;
    private PlannedCharge? answered;

    public WhatIfs() => worth = draining.PerTonne("worthPerTonne", -1e5, 1e5, isRequired: true);

    [Parameter, EditorRequired]
    public ChargeView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    /// <summary>Names of materials by code.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyDictionary<string, string> Names { get; set; } = new Dictionary<string, string>();

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    /// <summary>Code of what is asked to run out; empty for the cheapest.</summary>
    [Parameter, EditorRequired]
    public TextEntry RunsOut { get; set; } = null!;

    [Parameter]
    public EventCallback Answered { get; set; }

    [Inject]
    private ILogger<WhatIfs> Log { get; set; } = null!;

    /// <summary>The cheapest scrap of the plan; where it holds none, the cheapest of all.</summary>
    private string? Cheapest => !Planned.IsReached ? null
        : RunningOut.CheapestUsed(Planned.Problem with { Materials = [.. Planned.Problem.Materials.Where(IsScrap)] }, Planned.Plan) ?? RunningOut.CheapestUsed(Planned.Problem, Planned.Plan);

    /// <summary>What is asked to run out: what was chosen as long as it is in the plan.</summary>
    private string? Scarce => Planned.IsReached && Planned.Plan.Lines.Any(line => line.Code == RunsOut.Value) ? RunsOut.Value : Cheapest;

    private IEnumerable<Choice> InPlan => Planned.Plan.Lines.Select(line => new Choice(line.Code, NameOf(line.Code)));

    private string CheapestWords(string code) => Text[IsScrap(Planned.Problem.Materials.Single(material => material.Code == code)) ? "RunsOutScrap" : "RunsOutCheapest", NameOf(code)];

    private bool IsScrap(ChargeMaterial material) => View.Materials.Any(item => item.Code == material.Code && item.Kind is (MaterialKind.SteelScrap or MaterialKind.CastScrap));

    public void Dispose()
    {
        joint?.Dispose();
        runOut?.Dispose();
        buying?.Dispose();
        drained?.Dispose();
    }

    protected override void OnInitialized() => (joint, runOut, buying, drained) = (new(Log), new(Log), new(Log), new(Log));

    protected override void OnParametersSet()
    {
        if (answered == Planned) return;
        answered = Planned;
        Dispose();
    }

    private Task Choose()
    {
        runOut.Withdraw();
        return Answered.InvokeAsync();
    }

    private Task AskJoint() => joint.Ask(_ => JointProbability.Of(Planned.Problem, Planned.Kilograms));

    private Task AskRunOut(string code) => runOut.Ask(ct => RunningOut.Of(Planned.Problem, code, 0, ct));

    private Task AskDrained()
    {
        draining.Find([.. draining.Fields.Select(field => field.Standing).OfType<Finding>()]);
        return draining.HasFindings ? Task.CompletedTask : drained.Ask(ct => HeelDraining.Compare(Planned.Problem, worth.Needed, ct));
    }

    /// <summary>What the yard knows, can be planned and has none of is offered beside what is there.</summary>
    private Task AskBuying()
    {
        var known = Planned.Problem.Materials.Select(material => material.Code).ToHashSet();
        List<ChargeMaterial> offered = [.. View.Materials.Where(item => !known.Contains(item.Code) && item.StockKg <= 0).Select(ChargeMaterials.Offered).OfType<ChargeMaterial>()];
        var problem = UnseenMetals.Without(Planned.Problem with { Materials = [.. Planned.Problem.Materials, .. offered.Select(material => material with { AvailableKg = 0 })] });
        return buying.Ask(ct => Purchases.Of(problem, [], ct));
    }

    private string NameOf(string code) => Names.GetValueOrDefault(code, code);

    private string JointWords(JointProbability often) => string.Join(" ", (IEnumerable<string>)
    [
        Text["Joint", NumberText.Show(100 * often.All, 1), NumberText.Show(often.Draws), NumberText.Show(100 * often.StandardError, 1)].Value,
        .. Planned.Problem.Limits.Zip(often.Each).Where(limit => limit.Second < 1).Select(limit => Text["JointEach", BoundOf(limit.First), NumberText.Show(100 * limit.Second, 1)].Value),
    ]);

    /// <summary>A curve has a row for each of its bounds.</summary>
    private string BoundOf(QuantityLimit limit)
    {
        var name = QuantityText.Name(LimitText, limit.Quantity.Name);
        return Planned.Problem.Limits.Count(other => other.Quantity.Name == limit.Quantity.Name) == 1 ? name : $"{name}, {Text[limit.Max is null ? "Least" : "Most"]}";
    }

    /// <summary>A search that came to no end proves neither a cost nor that there is no charge.</summary>
    private string RunOutWords(RunOut without) => without switch
    {
        { MakesItImpossible: true } => Text["RunOutImpossible", NameOf(without.Code)],
        { ExtraCost: { } extra } => Text["RunOutCosts", NameOf(without.Code), NumberText.Show(extra, 2), Currency] + Doubt(without.Before, without.After),
        _ => Text["NotDecided"],
    };

    private string Doubt(params ChargePlan[] plans) => plans.Any(plan => plan.Status is PlanStatus.TimeLimit) ? " " + Text["NotProvenBoth"] : "";

    /// <summary>Gives up what is being reckoned with solves; what is there already stays.</summary>
    private void Stop()
    {
        if (runOut.IsWorking) runOut.Withdraw();
        if (buying.IsWorking) buying.Withdraw();
        if (drained.IsWorking) drained.Withdraw();
    }

    private string DrainedWords(HeelComparison compared) => compared switch
    {
        { MakesItPossible: true } => Text["DrainPossible", MassText.Show(compared.DrainedKg), PriceText.Number(compared.Drained.CostPerTonne), PriceText.Unit(Currency)],
        { Saving: { } saving and > 0 } => Text["DrainSaves", MassText.Show(compared.DrainedKg), NumberText.Show(saving, 2), Currency] + Doubt(compared.WithHeel, compared.Drained),
        { Saving: { } saving } => Text["DrainCosts", MassText.Show(compared.DrainedKg), NumberText.Show(-saving, 2), Currency] + Doubt(compared.WithHeel, compared.Drained),
        { WithHeel.Status: PlanStatus.Infeasible, Drained.Status: PlanStatus.Infeasible } => Text["DrainNot"],
        { Drained.Status: PlanStatus.Infeasible } => Text["DrainImpossible"],
        _ => Text["NotDecided"],
    };
}

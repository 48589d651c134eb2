using System.ComponentModel;
using System.Text.Json.Serialization;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Web.Api.Parts;

/// <summary>What a charge and a correction answer alike. Where there is no plan its figures are null, not 0.</summary>
internal record PlanAnswer
{
    private readonly IReadOnlyList<string> endless;

    public PlanAnswer(ChargePlan plan)
    {
        // Where the time ran out before anything was found there is no plan either.
        var planned = plan.Status == PlanStatus.Optimal || plan.Lines.Count > 0;
        endless = plan.Endless;
        Status = Name(plan.Status);
        TotalCost = planned ? Finite(plan.TotalCost) : null;
        CostPerTonne = planned ? Finite(plan.CostPerTonne) : null;
        LiquidKg = planned ? Finite(plan.LiquidKg) : null;
        Lines = [.. plan.Lines.Select(LineAnswer.From)];
        Analysis = Percents(plan.Analysis);
        AssumedZero = [.. plan.AssumedZero.Select(e => e.Symbol)];
        Limits = [.. plan.Limits.Select(LimitAnswer.From)];
        Materials = [.. plan.Materials.Select(MaterialAnswer.From)];
        Conflicts = [.. plan.Conflicts.Select(ConflictAnswer.From)];
        if (plan.Status != PlanStatus.TimeLimit) return; // every other answer is that of the contract, to the field
        GapPercent = plan.GapPercent;
        Uncut = plan.Continuous is { } uncut ? UncutAnswer.From(uncut) : null;
    }

    [Description("optimal, infeasible or timeLimit.")]
    public string Status { get; }

    [Description("Cost of all that is weighed in, in the currency of the prices.")]
    public double? TotalCost { get; }

    [Description("Cost per 1000 kg: of new liquid metal for a charge, of the bath afterwards for a correction; null where there is none.")]
    public double? CostPerTonne { get; }

    [Description("Liquid mass, heel included, kg.")]
    public double? LiquidKg { get; }

    [Description("What is weighed in.")]
    public IReadOnlyList<LineAnswer> Lines { get; }

    [Description("Expected mass percent by element symbol.")]
    public IReadOnlyDictionary<string, double> Analysis { get; }

    [Description("Elements that a limit asks for and that were not measured in the metal already there: used as 0.")]
    public IReadOnlyList<string> AssumedZero { get; }

    [Description("Where the plan sits on each limit, in their order.")]
    public IReadOnlyList<LimitAnswer> Limits { get; }

    [Description("Why each material is in or out, in their order.")]
    public IReadOnlyList<MaterialAnswer> Materials { get; }

    [Description("Where infeasible: an irreducible set of bounds that cannot be met together.")]
    public IReadOnlyList<ConflictAnswer> Conflicts { get; }

    [Description("With timeLimit: a plan might cost less than this one by so many percent, and not by more; not there where that is not known and with every other status.")]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? GapPercent { get; }

    [Description("With timeLimit, where no plan in whole pieces was found: the cheapest as if pieces could be cut. No plan costs less. Not there otherwise.")]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public UncutAnswer? Uncut { get; }

    /// <summary>Materials without a bound that they need: nobody can say what is cheapest.</summary>
    /// <param name="list">Name of the list that they stand in.</param>
    /// <param name="materials">The list.</param>
    internal IEnumerable<Finding> Without(string list, IReadOnlyList<ChargeMaterial> materials) =>
        materials.Index().Where(m => endless.Contains(m.Item.Code)).Select(m => new Finding($"{list}[{m.Index}].maxKg", "material.endless"));

    /// <summary>An analysis as the contract writes it.</summary>
    internal static Dictionary<string, double> Percents(Analysis analysis) => analysis.ToDictionary(p => p.Key.Symbol, p => p.Value);

    /// <summary>A ratio to no mass is no number: JSON says null.</summary>
    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    private static string Name(PlanStatus status) => status switch
    {
        PlanStatus.Optimal => "optimal",
        PlanStatus.Infeasible => "infeasible",
        PlanStatus.TimeLimit => "timeLimit",
        _ => throw new ArgumentOutOfRangeException(nameof(status), status, "A status without a name in the contract."),
    };
}

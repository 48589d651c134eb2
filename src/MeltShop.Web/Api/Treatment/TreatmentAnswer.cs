using System.ComponentModel;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Web.Api.Parts;

namespace MeltShop.Web.Api.Treatment;

/// <summary>The answer of the treatment endpoint; where no mass of this alloy reaches the target its figures are null.</summary>
internal sealed record TreatmentAnswer
{
    private static readonly Element[] Used = [Element.Si, Element.S];

    public TreatmentAnswer(TreatmentProblem problem, TreatmentResult? result)
    {
        Status = result is null ? "infeasible" : "optimal";
        AlloyKg = result?.AlloyKg;
        AlloyPercent = result?.AlloyPercent;
        MassAfterKg = result?.MassAfterKg;
        MgAfterTreatmentPercent = result?.MgAfterTreatmentPercent;
        SiliconPickupPercent = result?.SiliconPickupPercent;
        AnalysisAfter = result is null ? null : PlanAnswer.Percents(result.AnalysisAfter);
        ResidualMg = [.. (result?.ResidualMg ?? []).Select(row => new ResidualMgAnswer(row.Minutes, row.Percent))];
        AssumedZero = [.. Used.Where(element => !problem.BaseAnalysis.Has(element)).Select(element => element.Symbol)];
    }

    [Description("optimal, or infeasible where no mass of this alloy reaches the target.")]
    public string Status { get; }

    [Description("Mass of the treatment alloy, kg.")]
    public double? AlloyKg { get; }

    [Description("Alloy per iron, %.")]
    public double? AlloyPercent { get; }

    [Description("Mass of the iron after treatment, kg.")]
    public double? MassAfterKg { get; }

    [Description("Residual magnesium at minute 0, the end of the reaction, %.")]
    public double? MgAfterTreatmentPercent { get; }

    [Description("Silicon after less silicon before, percentage points; the dilution by the alloy is in it.")]
    public double? SiliconPickupPercent { get; }

    [Description("Mass percent by element symbol at minute 0.")]
    public IReadOnlyDictionary<string, double>? AnalysisAfter { get; }

    [Description("Residual magnesium at minutes 0 to 30.")]
    public IReadOnlyList<ResidualMgAnswer> ResidualMg { get; }

    [Description("Elements that the balance or the silicon pickup asks for and that were not measured in the base iron: used as 0.")]
    public IReadOnlyList<string> AssumedZero { get; }
}

internal sealed record ResidualMgAnswer(
    [property: Description("Minutes from the end of the reaction.")] int Minutes,
    [property: Description("Residual magnesium, %.")] double Percent);

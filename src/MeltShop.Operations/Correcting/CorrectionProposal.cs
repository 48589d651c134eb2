using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Heat;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Operations.Correcting;

/// <summary>A correction with what it costs in money, heat and minutes.</summary>
/// <param name="Plan">Additions, analysis afterwards, what clashes. Its own cost is that of the goal.</param>
/// <param name="Cost">At the yard's prices, tapping off included.</param>
/// <param name="EnergyKWh">At the meter, to bring the bath back to its temperature; null where the heat of an addition is not known.</param>
/// <param name="Minutes">For that energy at the furnace's rated power; null likewise.</param>
public sealed record CorrectionProposal(CorrectionPlan Plan, double Cost, double? EnergyKWh, double? Minutes)
{
    /// <summary>Heat in the iron over energy at the meter, %: 60 to 72 in practice (see the formula of the melting energy), the middle of it here.</summary>
    public const double EfficiencyPercent = 66;

    /// <summary>Whether there is a way that keeps all limits.</summary>
    public bool IsReached => Plan.Plan.Status != PlanStatus.Infeasible && (Plan.Plan.LiquidKg > 0);

    /// <summary>Whether it is proven that there is none. A search that came to no end proves nothing: then there may be neither a way nor this.</summary>
    public bool IsImpossible => Plan.Plan.Status == PlanStatus.Infeasible;

    /// <summary>Materials of which less would be added than is worth weighing: no correction with more of them, or none, keeps the limits.</summary>
    public IReadOnlyList<string> TooSmall { get; init; } = [];

    /// <summary>The bath after the additions with the power off, °C; null where the heat of one is not known.</summary>
    public double? AfterC { get; init; }

    /// <summary>With the power off it would begin to freeze: it is below the liquidus of what it becomes. The formula of the fall ends there.</summary>
    public bool Freezes { get; init; }

    /// <summary>The bath is inside already.</summary>
    public bool IsIdle => IsReached && Plan.Plan.Lines.Count == 0 && Plan.TapOffKg == 0;

    /// <summary>Solves the problem, and prices the answer.</summary>
    public static CorrectionProposal For(CorrectionFacts facts, CorrectionChoice choice, CorrectionProblem problem, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(choice);
        var plan = CorrectionOptimiser.Plan(problem, ct);
        var prices = facts.View.Materials.ToDictionary(m => m.Code, m => (double)m.PricePerTonne);
        var cost = plan.Plan.Lines.Sum(line => line.Kg * prices[line.Code] / 1000) + (plan.TapOffKg * (double)(choice.TapOffCostPerTonne ?? 0) / 1000);
        double? energy = plan.TemperatureDropC is { } drop
            ? Math.Max(0, drop) * HeatContent.KWhPerTonneKelvin * plan.Plan.LiquidKg / 1000 / (EfficiencyPercent / 100)
            : null;
        var after = choice.TemperatureC - plan.TemperatureDropC;
        return new(plan, cost, energy, energy is { } kWh ? MeltingEnergy.Minutes(kWh, facts.View.PowerKw) : null)
        {
            AfterC = after,
            Freezes = after < LiquidusC(plan.Plan.Analysis),
            // A solver's last digit under the least is none.
            TooSmall = [.. plan.Plan.Lines.Where(line => line.Kg < choice.LeastAdditionKg * (1 - 1e-9)).Select(line => line.Code)],
        };
    }

    // Beyond the eutectic the line ends, at its lowest.
    private static double LiquidusC(Analysis analysis) => Liquidus.TemperatureC(Math.Min(Liquidus.CarbonEquivalent.Value(analysis), Liquidus.MaximumCarbonEquivalent));
}

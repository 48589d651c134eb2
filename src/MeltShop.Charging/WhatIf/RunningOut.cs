using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging.WhatIf;

/// <summary>What changes if a material runs out: the same heat with what is left of it, or without it.</summary>
public static class RunningOut
{
    /// <summary>Plans without a material, or with what is left of it. What was compulsory of it is so only as far as it is there.</summary>
    /// <param name="problem">What was asked.</param>
    /// <param name="code">The material that runs out.</param>
    /// <param name="leftKg">What of it is left to be weighed, kg, 0 or more.</param>
    /// <param name="cancellation">Ends the call.</param>
    /// <exception cref="ArgumentException">The problem does not hold the material, or what is left is no mass.</exception>
    /// <inheritdoc cref="ChargeOptimiser.Plan" path="/exception"/>
    public static RunOut Of(ChargeProblem problem, string code, double leftKg = 0, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        if (problem.Materials.All(m => m.Code != code)) throw new ArgumentException($"No material of the problem is called {code}.", nameof(code));
        if (!double.IsFinite(leftKg) || leftKg < 0) throw new ArgumentException($"{leftKg} kg is no mass.", nameof(leftKg));
        var rest = problem with { Materials = [.. problem.Materials.Select(m => m.Code == code ? Scarce(m, problem.WeighedKg.GetValueOrDefault(code) + leftKg) : m)] };
        return new(code, leftKg, ChargeOptimiser.Plan(problem, cancellation), ChargeOptimiser.Plan(rest, cancellation));
    }

    /// <summary>The material of a plan with the lowest price per tonne; null where there is no plan.</summary>
    public static string? CheapestUsed(ChargeProblem problem, ChargePlan plan)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(plan);
        var used = plan.Lines.Select(l => l.Code).ToHashSet();
        return problem.Materials.Where(m => used.Contains(m.Code)).MinBy(m => m.PricePerTonne)?.Code;
    }

    private static ChargeMaterial Scarce(ChargeMaterial material, double kg)
    {
        var available = Math.Min(kg, material.AvailableKg ?? double.PositiveInfinity);
        return material with { AvailableKg = available, MinKg = Math.Min(material.MinKg, available), MinPercent = 0 };
    }
}

/// <summary>A heat as it is and with less of one material.</summary>
/// <param name="Code">The material that runs out.</param>
/// <param name="LeftKg">What of it is left to be weighed, kg.</param>
/// <param name="Before">The plan as things are.</param>
/// <param name="After">The plan then; where infeasible it says what clashes.</param>
public sealed record RunOut(string Code, double LeftKg, ChargePlan Before, ChargePlan After)
{
    /// <summary>What the heat costs more then; null where one of the plans does not exist.</summary>
    public double? ExtraCost => Before.LiquidKg > 0 && After.LiquidKg > 0 ? After.TotalCost - Before.TotalCost : null;

    /// <summary>Whether the grade can be met now and cannot be met then.</summary>
    public bool MakesItImpossible => Before.LiquidKg > 0 && After.Status == PlanStatus.Infeasible;

    /// <summary>Materials whose mass differs by more than a millionth of the melt, in the order of the materials; empty where one of the plans does not exist.</summary>
    public IReadOnlyList<ChangedMass> Changes => ExtraCost is null ? [] : [.. Before.Materials.Zip(After.Materials)
        .Select(m => new ChangedMass(m.First.Code, m.First.Kg, m.Second.Kg)).Where(m => Math.Abs(m.AfterKg - m.BeforeKg) > 1e-6 * Before.LiquidKg)];
}

/// <summary>A material of which another mass is charged.</summary>
/// <param name="Code">The material.</param>
/// <param name="BeforeKg">Weighed mass as things are, kg.</param>
/// <param name="AfterKg">Weighed mass then, kg.</param>
public sealed record ChangedMass(string Code, double BeforeKg, double AfterKg);

using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Charging.Tests.Solving;

/// <summary>Whole pieces under confidence: against every pair of numbers, each with its masses planned beside it.</summary>
public class ConfidentPiecesTests
{
    [Theory]
    [InlineData(5, 80, true)]
    [InlineData(13, 80, true)]
    [InlineData(22, 80, true)]
    [InlineData(45, 95, false)]
    public void Yard_WithTwoMaterialsInPieces_CostsTheLeastOfAllNumbers(int seed, double confidence, bool isPossible)
    {
        var yard = RandomYard.Charge(seed, confidence: confidence);
        var (problem, pieceKg) = (yard with { MeltToleranceKg = 0.03 * yard.MeltKg }, Math.Round(yard.MeltKg / 12));
        var plan = Plan(InPieces(problem, pieceKg));

        var all = from first in Enumerable.Range(0, 13) from second in Enumerable.Range(0, 13 - first) select Plan(Held(problem, first * pieceKg, second * pieceKg));
        var found = all.Where(p => p.Status == PlanStatus.Optimal).ToList();
        Assert.Equal(isPossible ? PlanStatus.Optimal : PlanStatus.Infeasible, plan.Status);
        Assert.Equal(isPossible, found.Count > 1);
        Assert.Equal(found.Select(p => p.TotalCost).DefaultIfEmpty().Min(), plan.TotalCost, 1e-6 * Math.Abs(plan.TotalCost));
    }

    private static ChargePlan Plan(ChargeProblem problem) => ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);

    private static ChargeProblem InPieces(ChargeProblem problem, double pieceKg) =>
        problem with { Materials = [.. problem.Materials.Select((m, i) => i < 2 ? m with { PieceKg = pieceKg, MinKg = 0 } : m)] };

    private static ChargeProblem Held(ChargeProblem problem, params double[] kg) => problem with
    {
        Materials = [.. problem.Materials.Select((m, i) => i < 2 ? m with { MinKg = kg[i], MaxKg = Math.Min(kg[i], m.MaxKg ?? kg[i]) } : m)],
    };
}

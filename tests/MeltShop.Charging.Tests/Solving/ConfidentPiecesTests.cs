using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

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
        var pieceKg = Math.Round(yard.MeltKg / 12);

        RequireTheCheapest(InPieces(yard with { MeltToleranceKg = 0.03 * yard.MeltKg }, (0, pieceKg), (1, pieceKg)), isPossible);
    }

    [Theory]
    [InlineData(80)]
    [InlineData(97.5)]
    public void GreyIron_WithSteelAndReturnsInPieces_CostsTheLeastOfAllNumbers(double confidence)
    {
        var problem = GreyIron.Problem(confidence, Limit(Element.C, 3.22, 3.48), Limit(Element.Si, 1.75, 2.1), Limit(Element.Mn, 0.55, 0.95));

        RequireTheCheapest(InPieces(problem with { MeltToleranceKg = 20 }, (1, 37), (2, 55)), isPossible: true);
    }

    private static void RequireTheCheapest(ChargeProblem problem, bool isPossible)
    {
        var plan = Plan(problem);
        var found = AllNumbers(problem).Select(Plan).Where(p => p.Status == PlanStatus.Optimal).ToList();

        Assert.Equal(isPossible ? PlanStatus.Optimal : PlanStatus.Infeasible, plan.Status);
        Assert.Equal(isPossible, found.Count > 1);
        Assert.Equal(found.Select(p => p.TotalCost).DefaultIfEmpty().Min(), plan.TotalCost, 1e-6 * Math.Abs(plan.TotalCost));
        Assert.Equal(isPossible, KeptRows.Keeps(problem, plan.Lines));
    }

    private static ChargePlan Plan(ChargeProblem problem) => ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);

    private static ChargeProblem InPieces(ChargeProblem problem, params (int Index, double Kg)[] pieces) => problem with
    {
        Materials = [.. problem.Materials.Select((m, i) => pieces.Where(p => p.Index == i).Select(p => m with { PieceKg = p.Kg, MinKg = 0 }).SingleOrDefault() ?? m)],
    };

    /// <summary>The problem with the two materials held to each pair of whole numbers that the melt has room for.</summary>
    private static IEnumerable<ChargeProblem> AllNumbers(ChargeProblem problem)
    {
        var (pieces, mostKg) = (problem.Materials.Where(m => m.PieceKg > 0).ToList(), 1.1 * (problem.MeltKg + problem.MeltToleranceKg));
        for (var firstKg = 0.0; firstKg <= Math.Min(mostKg, pieces[0].MaxKg ?? mostKg); firstKg += pieces[0].PieceKg!.Value)
        {
            for (var secondKg = 0.0; secondKg <= Math.Min(mostKg - firstKg, pieces[1].MaxKg ?? mostKg); secondKg += pieces[1].PieceKg!.Value)
                yield return Held(problem, (pieces[0].Code, firstKg), (pieces[1].Code, secondKg));
        }
    }

    private static ChargeProblem Held(ChargeProblem problem, params (string Code, double Kg)[] held) => problem with
    {
        Materials = [.. problem.Materials.Select(m => held.Where(h => h.Code == m.Code).Select(h => m with { MinKg = h.Kg, MaxKg = h.Kg, PieceKg = null }).SingleOrDefault() ?? m)],
    };
}

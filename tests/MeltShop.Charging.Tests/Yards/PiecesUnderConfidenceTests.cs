using MeltShop.Charging.Plans;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Yards;

public class PiecesUnderConfidenceTests
{
    [Theory]
    [InlineData(80)]
    [InlineData(90)]
    [InlineData(95)]
    [InlineData(97.5)]
    public void GreyIron_InPieces_KeepsItsLimits(double confidence)
    {
        var problem = GreyIron.Problem(confidence, Limit(Element.C, 3.22, 3.48), Limit(Element.Si, 1.75, 2.1), Limit(Element.Mn, 0.55, 0.95));
        problem = problem with { MeltToleranceKg = 20, Materials = [.. problem.Materials.Select((m, i) => i is 1 or 2 ? m with { PieceKg = i == 1 ? 37 : 55 } : m)] };
        var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        Assert.True(ChargeCheck.Of(problem, plan.Lines.ToDictionary(l => l.Code, l => l.Kg)).Holds);
    }
}

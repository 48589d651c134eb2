using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Planning;

/// <summary>What a plan says of itself where it is not proven, and where there is none.</summary>
public class PlanWriterTests
{
    // 100 of prices, 10 of slag, 5 of energy, less 20 of bonus, and 5 of nearness: 100 is what was minimised.
    private static readonly CostParts Hundred = new(100, 10, 5, 20, 5);

    public static TheoryData<CostParts, double?, double?> Gaps => new()
    {
        { Hundred, 1.8, 10 }, // the program's 1 costs 50: no plan costs less than 90
        { Hundred, 2, 0 },
        { Hundred, 2 + 1e-9, 0 }, // by rounding a bound may lie over what was found
        { new(-100, 0, 0, 0, 0), -2.2, 10 }, // scrap that one is paid to take
        { new(20, 0, 0, 20, 0), -1, null }, // a share of nothing
        { Hundred, null, null },
    };

    [Theory]
    [MemberData(nameof(Gaps))]
    public void Plan_NotProven_MightCostLessBySoManyPercent(CostParts costs, double? bound, double? gapPercent)
    {
        var plan = PlanWriter.Unproven(new() { Status = PlanStatus.TimeLimit, Costs = costs }, Solution.Without(PlanStatus.TimeLimit) with { Bound = bound, End = SearchEnd.WorkerLost }, costScale: 50);

        Assert.Equal(gapPercent, plan.GapPercent is { } gap ? Math.Round(gap, 6) : null);
        Assert.Equal(SearchEnd.WorkerLost, plan.End);
    }

    [Fact]
    public void NoPlan_SaysHowTheSearchEndedAndWhatWouldBeCheapestInCutPieces()
    {
        var formulation = new MeltFormulation(ChargeOptimiser.MeltOf(new()
        {
            MeltKg = 1000, Materials = [Material("a", 300, (Element.Si, 1)) with { PieceKg = 400 }, Material("b", 400, (Element.Si, 2))], Limits = [Limit(Element.Si, 1.5, 1.7)],
        }));
        var lost = Solution.Without(PlanStatus.TimeLimit) with { End = SearchEnd.WorkerLost };
        var without = PlanWriter.WithoutPlan(formulation, lost);
        var cut = PlanWriter.WithoutPlan(formulation, lost with { Continuous = [1.25, 0.5] }); // a piece and a quarter, half of the melt

        Assert.Equal((PlanStatus.TimeLimit, SearchEnd.WorkerLost, null), (without.Status, without.End, without.Continuous));
        Assert.Equal([("a", 500.0), ("b", 500.0)], cut.Continuous!.Lines.Select(l => (l.Code, Math.Round(l.Kg, 9))));
        Assert.Equal(MissKind.Pieces, Assert.Single(cut.Continuous.Misses).Kind);
    }

    [Fact]
    public void Heel_WithoutWhatSeveralLimitsAskFor_NamesEachOnceInOrder()
    {
        var problem = new Charging.Problems.ChargeProblem
        {
            MeltKg = 1000, Heel = Metal.Of(100, Analysis.Of((Element.C, 3))), Materials = [Material("a", 300)],
            Limits = [Limit(Element.Si, 1, 2), Limit(Element.C, 3, 4), Limit("both", null, 3, (Element.Mn, 1), (Element.Si, 1))],
        };

        Assert.Equal([Element.Si, Element.Mn], PlanWriter.AssumedZero(ChargeOptimiser.MeltOf(problem)));
        Assert.Equal([Element.Si, Element.Mn], PlanWriter.AssumedZero(ChargeOptimiser.MeltOf(problem with { Limits = [.. problem.Limits.Reverse()] })));
        Assert.Empty(PlanWriter.AssumedZero(ChargeOptimiser.MeltOf(problem with { Heel = Metal.None })));
    }
}

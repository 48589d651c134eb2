using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Corrections;

/// <summary>Additions that nobody weighs: left out, or taken with the least that is weighed.</summary>
public class WorthWeighingTests
{
    private const int Seed = 2073, Baths = 60;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    // 0.1 points of 1000 kg are about 1 kg of carbon; the cheap coke may bring 0.02 kg before its sulphur is too much.
    [Fact]
    public void Addition_OfAFewGrams_IsLeftOutWhereAnotherCanDoItsWork()
    {
        CorrectionProblem Asked(double? least) => Bath((Element.C, 3.4), (Element.S, 0.010)) with
        {
            Additions = [.. new[] { Material("coke", 400, (Element.C, 98), (Element.S, 1)), Material("graphite", 900, (Element.C, 99.9)) }.Select(m => m with { LeastIfUsedKg = least })],
            Limits = [Limit(Element.C, 3.5, 3.6), Limit(Element.S, null, 0.0100103)],
        };

        Assert.InRange(Kg(Plan(Asked(null)), "coke"), 0.001, 0.099);
        var plan = Plan(Asked(0.1));
        Assert.Equal(["graphite"], plan.Lines.Select(l => l.Code));
        Assert.True(plan.TotalCost >= Plan(Asked(null)).TotalCost);
    }

    [Fact]
    public void Addition_ThatCannotBeLeftOut_ComesWithTheLeastThatIsWeighed()
    {
        var problem = Bath((Element.Sn, 0.010)) with { Additions = [Material("tin", 30800, (Element.Sn, 100)) with { LeastIfUsedKg = 0.1 }], Limits = [Limit(Element.Sn, 0.015, 0.025)] };

        Assert.Equal(0.1, Kg(Plan(problem), "tin"), 9); // 0.05 kg would do
        Assert.Equal(0.05, Kg(Plan(problem with { Additions = [problem.Additions[0] with { LeastIfUsedKg = null }] }), "tin"), 3);
    }

    [Fact]
    public void Addition_WhereNeitherNoneNorTheLeastKeepsTheLimits_IsPlannedAsSmallAsItIs()
    {
        var problem = Bath((Element.Sn, 0.010)) with { Additions = [Material("tin", 30800, (Element.Sn, 100)) with { LeastIfUsedKg = 0.1 }], Limits = [Limit(Element.Sn, 0.015, 0.016)] };

        Assert.InRange(Kg(Plan(problem), "tin"), 0.049, 0.061);
    }

    [Fact]
    public void LeastMass_OfNothing_IsRefused() => Assert.Throws<ArgumentException>(() => ChargeOptimiser.Plan(
        new() { MeltKg = 1, Materials = [Material("iron", 1, (Element.C, 3)) with { LeastIfUsedKg = 0 }], Limits = [] }, Soon));

    // Every material left out or in with its least, all 32 ways one after the other, each a plan of its own without the rule.
    [Fact]
    public void Correction_OfGeneratedBaths_CostsTheLeastOfAllWaysToLeaveOutOrTakeTheLeast()
    {
        var random = new Random(Seed);
        var bites = 0;
        for (var i = 0; i < Baths; i++)
        {
            var problem = Some(random);
            var least = Enumerable.Range(0, 1 << problem.Additions.Count).Select(way => Plan(Way(problem, way)))
                .Where(p => p.Status == PlanStatus.Optimal).Select(p => (double?)p.TotalCost).Min();
            var plan = Plan(problem);
            if (least is not { } cost) continue;
            if (plan.TotalCost > Plan(Without(problem)).TotalCost + 1e-6) bites++;
            Assert.True(Math.Abs(plan.TotalCost - cost) <= 1e-6 * Math.Max(1, cost), $"seed {Seed}, bath {i}: {plan.TotalCost}, all ways {cost}");
        }

        Assert.True(bites >= 10, $"seed {Seed}: the rule changed {bites} plans only");
    }

    private static CorrectionProblem Some(Random random)
    {
        double Between(double from, double to) => from + ((to - from) * random.NextDouble());
        return Bath((Element.C, Between(3.35, 3.6)), (Element.Si, Between(1.7, 2.1)), (Element.Mn, Between(0.25, 0.45)), (Element.S, Between(0.008, 0.0099))) with
        {
            Additions =
            [
                .. new[]
                {
                    Material("coke", Between(300, 500), (Element.C, 97), (Element.S, 1)),
                    Material("graphite", Between(700, 1100), (Element.C, 99)),
                    Material("ferrosilicon", Between(1300, 1900), (Element.C, 0.1), (Element.Si, 75)),
                    Material("ferromanganese", Between(1200, 1700), (Element.C, 6.8), (Element.Mn, 75)),
                    Material("carbide", Between(900, 1400), (Element.C, 29), (Element.Si, 62)),
                }.Select(m => m with { LeastIfUsedKg = 1 }),
            ],
            Limits = [Limit(Element.C, 3.45, 3.6), Limit(Element.Si, 1.8, 2.2), Limit(Element.Mn, 0.3, 0.5), Limit(Element.S, null, 0.0105)],
        };
    }

    private static CorrectionProblem Way(CorrectionProblem problem, int way) => problem with
    {
        Additions = [.. problem.Additions.Select((a, j) => (way >> j & 1) == 0 ? a with { MaxKg = 0, LeastIfUsedKg = null } : a with { MinKg = a.LeastIfUsedKg!.Value, LeastIfUsedKg = null })],
    };

    private static CorrectionProblem Without(CorrectionProblem problem) => problem with { Additions = [.. problem.Additions.Select(a => a with { LeastIfUsedKg = null })] };

    private static CorrectionProblem Bath(params (Element Element, double Percent)[] analysis) =>
        new() { Bath = Metal.Of(1000, Analysis.Of(analysis)), TemperatureC = 1450, Additions = [], Limits = [], CapacityKg = 1200 };

    private static ChargePlan Plan(CorrectionProblem problem) => CorrectionOptimiser.Plan(problem, Soon).Plan;

    private static double Kg(ChargePlan plan, string code) => plan.Lines.Where(l => l.Code == code).Sum(l => l.Kg);
}

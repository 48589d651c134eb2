using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Corrections;

/// <summary>
/// 200 generated baths, each element anywhere about its window (seed 2072): a correction without tapping is a charge onto a heel of
/// which the whole bath is one, and GLPK, a program of its own, finds the least cost of that.
/// </summary>
public class CorrectionsAgainstGlpkTests
{
    private const int Seed = 2072, Baths = 200;

    [Fact]
    public async Task Correction_OfGeneratedBaths_CostsWhatGlpkFinds()
    {
        var random = new Random(Seed);
        var (corrected, impossible) = (0, 0);
        for (var i = 0; i < Baths; i++)
        {
            var problem = Problem(random);
            var expected = await Glpk.LeastCost(AsCharge(problem), TestContext.Current.CancellationToken);
            var plan = CorrectionOptimiser.Plan(problem, TestContext.Current.CancellationToken).Plan;

            Assert.True((plan.Status == PlanStatus.Optimal) == expected is not null, $"seed {Seed}, bath {i}: {plan.Status}, GLPK {expected}");
            if (expected is not { } least)
            {
                impossible++;
                continue;
            }

            if (least > 0) corrected++;
            Assert.True(Math.Abs(plan.TotalCost - least) <= 1e-5 * Math.Max(1, least), $"seed {Seed}, bath {i}: {plan.TotalCost}, GLPK {least}");
        }

        Assert.True(corrected >= 100 && impossible >= 5, $"seed {Seed}: {corrected} corrected, {impossible} impossible");
    }

    /// <summary>
    /// The same with a full furnace, metal that may be tapped off and alloys in whole bags: kilograms that stay are to GLPK a material of the
    /// bath's analysis whose price is what tapping them off would cost.
    /// </summary>
    [Fact]
    public async Task Correction_WithTappingOffLittleRoomAndWholeBags_CostsWhatGlpkFinds()
    {
        var random = new Random(Seed);
        var (tapped, bagged, impossible) = (0, 0, 0);
        for (var i = 0; i < Baths; i++)
        {
            var free = Problem(random);
            var problem = free with
            {
                CapacityKg = free.Bath.Kg * Between(random, 1, 1.3), MaxTapOffKg = free.Bath.Kg * Between(random, 0.05, 0.4), TapOffCostPerTonne = Between(random, 100, 500),
                Additions = [.. free.Additions.Select(a => a.Code.StartsWith("ferro", StringComparison.Ordinal) ? a with { PieceKg = a.Code == "ferrosilicon" ? 10 : 5 } : a)],
            };
            var charge = AsCharge(problem);
            var stays = charge with
            {
                Heel = Metal.Of(problem.Bath.Kg - problem.MaxTapOffKg, problem.Bath.Analysis), MeltKg = problem.Bath.Kg - problem.MaxTapOffKg,
                MeltToleranceKg = problem.CapacityKg.Value - (problem.Bath.Kg - problem.MaxTapOffKg),
                Materials = [.. problem.Additions, Material("stays", -problem.TapOffCostPerTonne.Value, [.. problem.Bath.Analysis.Select(p => (p.Key, p.Value))]) with { AvailableKg = problem.MaxTapOffKg }],
            };
            var expected = await Glpk.LeastCost(stays, TestContext.Current.CancellationToken) + (problem.TapOffCostPerTonne * problem.MaxTapOffKg / 1000);
            var correction = CorrectionOptimiser.Plan(problem, TestContext.Current.CancellationToken);
            var plan = correction.Plan;

            Assert.True((plan.Status == PlanStatus.Infeasible) == expected is null, $"seed {Seed}, bath {i}: {plan.Status}, GLPK {expected}");
            if (expected is not { } least)
            {
                impossible++;
                continue;
            }

            if (correction.TapOffKg > 0) tapped++;
            if (plan.Lines.Any(l => l.Code.StartsWith("ferro", StringComparison.Ordinal))) bagged++;
            Assert.All(plan.Lines.Where(l => l.Code.StartsWith("ferro", StringComparison.Ordinal)), l => Assert.Equal(0, Math.IEEERemainder(l.Kg, 5), 1e-6));
            Assert.True(plan.LiquidKg <= problem.CapacityKg + 1e-6);
            Assert.True(Math.Abs(plan.TotalCost - least) <= 1e-5 * Math.Max(1, least), $"seed {Seed}, bath {i}: {plan.TotalCost}, GLPK {least}");
        }

        Assert.True(tapped >= 20 && bagged >= 50 && impossible >= 5, $"seed {Seed}: {tapped} tapped off, {bagged} with bags, {impossible} impossible");
    }

    private static CorrectionProblem Problem(Random random) => new()
    {
        Bath = Metal.Of(1000 + (4000 * random.NextDouble()), Analysis.Of(
            (Element.C, Between(random, 3.1, 3.8)), (Element.Si, Between(random, 1.4, 2.5)), (Element.Mn, Between(random, 0.2, 0.6)), (Element.Cr, Between(random, 0.02, 0.12)))),
        TemperatureC = 1450,
        Additions =
        [
            Material("graphite", Between(random, 700, 1100), (Element.C, 99)).Yielding(100, (Element.C, Between(random, 80, 95))),
            Material("ferrosilicon", Between(random, 1300, 1900), (Element.C, 0.1), (Element.Si, 75)).Yielding(100, (Element.Si, Between(random, 85, 95))),
            Material("ferromanganese", Between(random, 1200, 1700), (Element.C, 6.8), (Element.Mn, 75)).Yielding(100, (Element.Mn, 90)),
            Material("steel", Between(random, 280, 380), (Element.C, 0.1), (Element.Si, 0.2), (Element.Mn, 0.6), (Element.Cr, 0.04)) with { AvailableKg = Between(random, 100, 1500) },
            Material("pig iron", Between(random, 380, 480), (Element.C, 4.2), (Element.Si, 0.8), (Element.Mn, 0.05), (Element.Cr, 0.01)) with { AvailableKg = Between(random, 0, 500) },
        ],
        Limits = [Limit(Element.C, 3.4, 3.6, margin: 0.02), Limit(Element.Si, 1.8, 2.2, margin: 0.03), Limit(Element.Mn, 0.3, 0.5), Limit(Element.Cr, null, 0.1)],
    };

    private static double Between(Random random, double from, double to) => from + ((to - from) * random.NextDouble());

    private static ChargeProblem AsCharge(CorrectionProblem problem) => new()
    {
        Heel = problem.Bath,
        MeltKg = problem.Bath.Kg,
        MeltToleranceKg = 100_000,
        Materials = problem.Additions,
        Limits = [.. problem.Limits.Select(l => new QuantityLimit(l.Quantity, l.Min + l.Margin, l.Max - l.Margin))],
    };
}

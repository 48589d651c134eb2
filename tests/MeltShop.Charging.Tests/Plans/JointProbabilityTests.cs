using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Plans;

/// <summary>Drawn heats against shares of the normal distribution that any table has; four standard errors is as far as draws may be off.</summary>
public class JointProbabilityTests
{
    private const double WithinOneDeviation = 0.682689;

    // 1000 kg with 2 % Si and 3 % C, which scatter by 0.1 and 0.2.
    private static readonly ChargeMaterial Iron = Material("iron", 300, (Element.Si, 2), (Element.C, 3)).Scattering((Element.Si, 0.1), (Element.C, 0.2));

    [Fact]
    public void OneLimit_OfOneDeviationToEachSide_IsKeptByTwoThirds()
    {
        var drawn = Draw(Limit(Element.Si, 1.9, 2.1));

        Assert.Equal(WithinOneDeviation, drawn.All, 4 * drawn.StandardError);
        Assert.Equal(drawn.All, Assert.Single(drawn.Each));
        Assert.Equal(Math.Sqrt(drawn.All * (1 - drawn.All) / 20_000), drawn.StandardError, 1e-12);
        Assert.Equal((20_000, 1), (drawn.Draws, drawn.Seed));
    }

    [Fact]
    public void Charge_OnABoundButForWhatSolvingLeavesOver_KeepsItInEveryHeat()
    {
        var problem = new ChargeProblem
        {
            MeltKg = 1000,
            Materials = [Material("low", 300, (Element.Si, 0.1)), Material("high", 400, (Element.Si, 0.7))],
            Limits = [Limit(Element.Si, 0.3, null), Limit(Element.Si, null, 0.2999996), Limit(Element.Si, 0.30001, null)],
        };

        // Two parts to one, to the gram: 0.2999998 %.
        var drawn = JointProbability.Of(problem, new Dictionary<string, double> { ["low"] = 666.667, ["high"] = 333.333 }, draws: 10);

        Assert.Equal([1.0, 1.0, 0.0], drawn.Each);
    }

    [Fact]
    public void TwoElements_ScatterApart_AndTwoLimitsOnOneTogether()
    {
        var apart = Draw(Limit(Element.Si, 2, null), Limit(Element.C, null, 3));
        var together = Draw(Limit(Element.Si, 2, null), Limit(Element.Si, 1.9, null));
        var never = Draw(Limit(Element.Si, 2, null), Limit(Element.Si, null, 1.99));

        Assert.All(apart.Each, share => Assert.Equal(0.5, share, 4 * Math.Sqrt(0.25 / 20_000)));
        Assert.Equal(0.25, apart.All, 4 * apart.StandardError);
        Assert.Equal(together.Each[0], together.All);
        Assert.Equal(0.841345, together.Each[1], 4 * Math.Sqrt(0.84 * 0.16 / 20_000));
        Assert.Equal(0, never.All);
    }

    [Fact]
    public void Sum_OfTwoElements_ScattersByTheRootOfTheSquares()
    {
        // 3·Si + C: √((3·0.1)² + 0.2²) = 0.36056 about 9.
        var drawn = Draw(Limit("3 Si + C", 9 - 0.36056, 9 + 0.36056, (Element.Si, 3), (Element.C, 1)));

        Assert.Equal(WithinOneDeviation, drawn.All, 4 * drawn.StandardError);
    }

    [Fact]
    public void Charge_WithoutScatter_KeepsOrMissesAlways()
    {
        var certain = Iron with { SpreadPercent = new Dictionary<Element, double>() };

        Assert.Equal([1, 1, 0], Draw(certain, 7, Limit(Element.Si, 2, null), Limit(Element.Si, null, 2), Limit(Element.C, 3.01, null)).Each);
        Assert.Equal(1, Draw(certain, 7, Limit(Element.Si, 2, 2)).All);
    }

    [Fact]
    public void SameSeed_DrawsTheSameHeats_AnotherSeedOthers()
    {
        var problem = Problem(Iron, Limit(Element.Si, 2, null));
        var charge = new Dictionary<string, double> { ["iron"] = 1000 };

        Assert.Equal(JointProbability.Of(problem, charge, 500, 3).All, JointProbability.Of(problem, charge, 500, 3).All);
        Assert.NotEqual(JointProbability.Of(problem, charge, 500, 3).All, JointProbability.Of(problem, charge, 500, 4).All);
        Assert.Throws<ArgumentOutOfRangeException>(() => JointProbability.Of(problem, charge, 0));
        Assert.Contains(JointProbability.Of(problem, charge, 1).All, new[] { 0.0, 1 });
    }

    private static JointProbability Draw(params QuantityLimit[] limits) => Draw(Iron, 20_000, limits);

    private static JointProbability Draw(ChargeMaterial iron, int draws, params QuantityLimit[] limits) =>
        JointProbability.Of(Problem(iron, limits), new Dictionary<string, double> { ["iron"] = 1000 }, draws);

    private static ChargeProblem Problem(ChargeMaterial iron, params QuantityLimit[] limits) => new() { MeltKg = 1000, Materials = [iron], Limits = limits };
}

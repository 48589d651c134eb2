using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Yards;

/// <summary>Rows with scatter against drawn heats: a bound that binds at 90 % holds in 90 of 100. The long suite draws those of generated yards.</summary>
public class ScatterTests
{
    private const int Draws = 40_000;

    [Fact]
    public void GreyIron_AtNinetyPercent_KeepsEachBindingBoundInNineOfTenHeats()
    {
        var problem = GreyIron.Problem(90, Limit(Element.C, 3.22, 3.48), Limit(Element.Si, 1.75, 2.1), Limit(Element.Mn, 0.55, 0.95));
        var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
        var (kept, all) = DrawnHeats.Of(problem, plan, Draws, seed: 7);

        var binding = kept.OfType<double>().ToList();
        Assert.InRange(binding.Count, 3, 6);
        Assert.All(binding, share => Assert.Equal(0.9, share, 0.005));
        // The reference (100,000 draws of another program) has all limits kept at once in 64 % of the heats.
        Assert.Equal(0.64, all, 0.01);
    }

    /// <summary>The shares of the same reference, which has them in whole percents.</summary>
    [Theory]
    [InlineData(50, 0.08)]
    [InlineData(80, 0.40)]
    [InlineData(95, 0.80)]
    [InlineData(99, 0.95)]
    public void GreyIron_AtAnyConfidence_IsHitAsOftenAsTheReference(double confidence, double share)
    {
        var problem = GreyIron.Problem(confidence, Limit(Element.C, 3.22, 3.48), Limit(Element.Si, 1.75, 2.1), Limit(Element.Mn, 0.55, 0.95));
        var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
        var hit = JointProbability.Of(problem, plan.Lines.ToDictionary(l => l.Code, l => l.Kg));

        Assert.Equal(share, hit.All, 0.005 + 4 * hit.StandardError);
    }

    [Fact]
    public void GreyIron_AtNinetyPercent_IsHitAsOftenByTheRoomsOwnSampling()
    {
        var problem = GreyIron.Problem(90, Limit(Element.C, 3.22, 3.48), Limit(Element.Si, 1.75, 2.1), Limit(Element.Mn, 0.55, 0.95));
        var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);
        var hit = JointProbability.Of(problem, plan.Lines.ToDictionary(l => l.Code, l => l.Kg));

        Assert.Equal(0.64, hit.All, 4 * hit.StandardError);
        Assert.Equal(0.9, hit.Each[1], 4 * Math.Sqrt(0.9 * 0.1 / hit.Draws));
        Assert.Equal(hit.All, JointProbability.Of(problem, plan.Lines.ToDictionary(l => l.Code, l => l.Kg)).All);
    }
}

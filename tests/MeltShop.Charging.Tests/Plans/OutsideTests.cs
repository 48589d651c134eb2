using MeltShop.Charging.Plans;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Plans;

/// <summary>A plan is not called inside a limit that its own scatter puts in doubt.</summary>
public class OutsideTests
{
    // Quantiles of the normal distribution (any table): one in twenty lies beyond 1.6449 standard deviations.
    [Theory]
    [InlineData(1.64, true)]
    [InlineData(1.65, false)]
    [InlineData(0, true)]
    public void Value_SomeDeviationsInside_IsTooCloseUpToOneInTwenty(double deviations, bool isTooClose)
    {
        var least = Outcome(3.5 + deviations * 0.02, 3.5, null);
        var most = Outcome(3.8 - deviations * 0.02, null, 3.8);

        Assert.Equal(isTooClose, least.IsTooCloseToTell());
        Assert.Equal(isTooClose, most.IsTooCloseToTell());
        Assert.Equal(0, most.Outside().Below);
        Assert.Equal(least.Outside().Below, most.Outside().Above, 1e-12);
    }

    // A charge made by hand may be outside: that is no doubt.
    [Theory]
    [InlineData(3.49, false)]
    [InlineData(3.5 - 1e-9, true)]
    [InlineData(3.8 + 1e-9, true)]
    [InlineData(3.81, false)]
    public void Value_OutsideItsBounds_IsNotTooCloseToTell(double value, bool isTooClose) => Assert.Equal(isTooClose, Outcome(value, 3.5, 3.8).IsTooCloseToTell());

    [Fact]
    public void Value_OfNoKnownScatter_IsTakenAsItIs()
    {
        var outcome = Outcome(3.5, 3.5, 3.8) with { StandardDeviation = 0 };

        Assert.False(outcome.IsTooCloseToTell());
        Assert.Equal((0, 0), outcome.Outside());
    }

    [Fact]
    public void GreyIron_PlannedOnTheMean_IsTooCloseWhereItBindsAndAtNinetyFivePercentNowhere()
    {
        var mean = Plan(50);
        var confident = Plan(95);

        Assert.Contains(mean.Limits, l => l.Binding is not BindingBound.None && l.StandardDeviation > 0);
        Assert.All(mean.Limits.Where(l => l.Binding is not BindingBound.None && l.StandardDeviation > 0), l => Assert.True(l.IsTooCloseToTell(), $"{l}"));
        Assert.All(confident.Limits, l => Assert.False(l.IsTooCloseToTell(), $"{l}"));
    }

    [Fact]
    public void Share_Outside_IsThatOfDrawnHeats()
    {
        var plan = Plan(50);
        var problem = GreyIron.Problem(50, Limit(Element.C, 3.22, 3.48), Limit(Element.Si, 1.75, 2.1), Limit(Element.Mn, 0.55, 0.95));
        var drawn = JointProbability.Of(problem, plan.Lines.ToDictionary(l => l.Code, l => l.Kg));

        Assert.All(plan.Limits.Zip(drawn.Each), limit =>
        {
            var (below, above) = limit.First.Outside();
            Assert.Equal(below + above, 1 - limit.Second, 4 * Math.Sqrt(0.25 / drawn.Draws));
        });
    }

    private static ChargePlan Plan(double confidence) => ChargeOptimiser.Plan(
        GreyIron.Problem(confidence, Limit(Element.C, 3.22, 3.48), Limit(Element.Si, 1.75, 2.1), Limit(Element.Mn, 0.55, 0.95)), TestContext.Current.CancellationToken);

    private static LimitOutcome Outcome(double value, double? min, double? max) => new("C", value, min, max, BindingBound.None, null) { StandardDeviation = 0.02 };
}

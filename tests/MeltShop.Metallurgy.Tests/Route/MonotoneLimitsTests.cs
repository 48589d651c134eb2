using CsCheck;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;

namespace MeltShop.Metallurgy.Tests.Route;

public class MonotoneLimitsTests
{
    // Giesserei-Lexikon, entry Perlitwertzahl, F = 961·exp(−Px): 100 at 2.263, 50 at 2.956, 5 at 5.259; 90 at 2.368 (by hand).
    [Theory]
    [InlineData(100, 2.263)]
    [InlineData(90, 2.368)]
    [InlineData(50, 2.956)]
    [InlineData(5, 5.259)]
    public void Ferrite_AtLeast_IsAtMostOfTheFactor(double ferrite, double factor) =>
        Assert.Equal(factor, MonotoneLimits.Ferrite(new(Least: ferrite)).Bounds.Most!.Value, 3);

    [Fact]
    public void Ferrite_NoRealLimit_IsNone()
    {
        var bounds = MonotoneLimits.Ferrite(new(Least: 0, Most: 100)).Bounds;

        Assert.Equal((null, null), (bounds.Least, bounds.Most));
    }

    [Fact]
    public void Limits_AndTheirQuantities_SayTheSame() => Law.Holds(
        Gen.Select(Gen.Double[2.8, 4.3], Gen.Double[0.5, 3.5], Gen.Double[0, 0.2], Gen.Double[0.7, 1.1], Gen.Double[1150, 1300], Gen.Double[1, 99]),
        one =>
        {
            var (c, si, p, saturation, liquidus, ferrite) = one;
            var analysis = Analysis.Of((Element.C, c), (Element.Si, si), (Element.P, p), (Element.Mn, 0.4), (Element.Cu, 0.5));
            var values = DerivedQuantities.Of(analysis).ToDictionary(q => q.Name, q => q.Value);

            Assert.Equal(values["Sc"] <= saturation, Met(MonotoneLimits.DegreeOfSaturation(null, saturation).Single(), analysis));
            Assert.Equal(values["Sc"] >= saturation, Met(MonotoneLimits.DegreeOfSaturation(saturation, null).Single(), analysis));
            Assert.Equal(values["ferritePercent"] >= ferrite, Met(MonotoneLimits.Ferrite(new(Least: ferrite)), analysis));
            Assert.Equal(values["ferritePercent"] <= ferrite, Met(MonotoneLimits.Ferrite(new(Most: ferrite)), analysis));
            if (values["liquidusC"] is not { } here) return;
            Assert.Equal(here >= liquidus, Met(MonotoneLimits.LiquidusTemperature(new(Least: liquidus)), analysis));
            Assert.Equal(here <= liquidus, Met(MonotoneLimits.LiquidusTemperature(new(Most: liquidus)), analysis));
        });

    [Fact]
    public void Hold_OnTheBound_Counts()
    {
        Bounds bounds = new(3.5, null, 3.7);

        Assert.True(bounds.Hold(3.5) && bounds.Hold(3.7 + 0.9e-6) && new Bounds().Hold(99));
        Assert.False(bounds.Hold(3.499998) || bounds.Hold(3.700002));
    }

    private static bool Met(QuantityBounds row, Analysis analysis) =>
        !(row.Quantity.Value(analysis) < row.Bounds.Least) && !(row.Quantity.Value(analysis) > row.Bounds.Most);
}

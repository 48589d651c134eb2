using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Metallurgy.Tests.Statistics;

public class NormalTests
{
    // Expected: the root of Φ(z) = p for the double nearest to p, worked out with 70 digits from the power series of Φ
    // (Abramowitz & Stegun, Handbook of Mathematical Functions, 1964, 26.2.11).
    [Theory]
    [InlineData(1e-12, -7.0344838253011319326)]
    [InlineData(1e-06, -4.7534243088228989573)]
    [InlineData(0.001, -3.0902323061678135353)]
    [InlineData(0.05, -1.6448536269514726879)]
    [InlineData(0.25, -0.6744897501960817432)]
    [InlineData(0.4, -0.2533471031357997413)]
    [InlineData(0.8, 0.84162123357291436380)]
    [InlineData(0.9, 1.28155156554460059348)]
    [InlineData(0.95, 1.64485362695147228427)]
    [InlineData(0.975, 1.95996398454005385560)]
    [InlineData(0.99, 2.32634787404084076763)]
    [InlineData(0.999, 3.09023230616781327775)]
    [InlineData(0.999999, 4.75342430881708776568)]
    [InlineData(0.5000001, 2.50662827331164830116e-7)]
    public void Quantile_Probability_AgreesToRounding(double probability, double expected)
    {
        var error = Math.Abs(Normal.Quantile(probability) / expected - 1);

        Assert.True(error <= 1e-15, $"off by {error:E2} of the value");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void Quantile_NoProbability_IsRefused(double probability)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.Quantile(probability));
    }

    [Fact]
    public void Quantile_Half_IsExactlyZero() => Assert.Equal(0, Normal.Quantile(0.5));

    [Fact]
    public void Cumulative_Quantile_ComesBack() => Assert.Equal(0.95, Normal.Cumulative(Normal.Quantile(0.95)), 15);
}

using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Treatment;

/// <summary>H. Shin and others, Journal of the Korea Foundry Society 25 (2005) 195-202: Sb/RE 0.8 suppressed it, of antimony 0, 0.005 and 0.02 %.</summary>
public class HeavySectionTests
{
    [Theory]
    [Printed("H. Shin, H. Yun, J. Shin, S. Lee, B. Moon, Journal of the Korea Foundry Society 25 (2005) 195-202, abstract: Sb/RE 0.8")]
    [InlineData(0.010, 0.008, true)]
    [InlineData(0.006, 0.0048, false)]
    [InlineData(0.025, 0.02, true)]
    [InlineData(0.026, 0.0208, false)]
    public void Antimony_RareEarths_KeepsThePrintedRatio(double rareEarths, double antimony, bool isTried)
    {
        var percent = ChunkyGraphite.AntimonyPercent(rareEarths);

        Assert.Equal(antimony, percent, 1e-12);
        Assert.Equal(isTried, ChunkyGraphite.IsTried(Math.Round(percent, 12)));
    }
}

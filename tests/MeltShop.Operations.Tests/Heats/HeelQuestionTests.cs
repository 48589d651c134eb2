using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Heats;
using MeltShop.Records.Heats;

namespace MeltShop.Operations.Tests.Heats;

public sealed class HeelQuestionTests
{
    private static readonly DateTimeOffset Sampled = new(2026, 3, 2, 8, 0, 0, TimeSpan.Zero);
    private static readonly Analysis Mean = Analysis.Of((Element.C, 3.6), (Element.Si, 1.5));

    private static readonly MaterialComposition Ferrosilicon = new()
    {
        Analysis = Analysis.Of((Element.Si, 75), (Element.Al, 1)),
        RecoveryPercent = new Dictionary<Element, double> { [Element.Si] = 92 },
    };

    [Fact]
    public void Build_AdditionAfterTheSample_IsInTheAnalysis()
    {
        var heel = HeelQuestion.Build(1000, Mean, [new(Sampled.AddMinutes(5), FurnaceMetalKind.Charged, 9.4, (Ferrosilicon, 10))]);

        // 10 kg bring 6.9 kg Si (92 %), 0.1 kg Al and 2.4 kg iron: 1009.4 kg with 15 + 6.9 kg Si. By hand.
        Assert.Equal(1009.4, heel.Kg, 9);
        Assert.Equal(100 * 21.9 / 1009.4, heel.Percent(Element.Si), 9);
        Assert.Equal(100 * 36 / 1009.4, heel.Percent(Element.C), 9);
    }

    [Fact]
    public void Build_ElementThatTheSampleDidNotMeasure_StaysUnknown()
    {
        var heel = HeelQuestion.Build(1000, Mean, [new(Sampled.AddMinutes(5), FurnaceMetalKind.Charged, 9.4, (Ferrosilicon, 10))]);

        Assert.Equal([Element.C, Element.Si], heel.Elements);
    }

    [Fact]
    public void Build_TappedBeforeTheAddition_CountsInTheirOrder()
    {
        MetalChange tap = new(Sampled.AddMinutes(2), FurnaceMetalKind.Tapped, -500);
        MetalChange addition = new(Sampled.AddMinutes(5), FurnaceMetalKind.Charged, 9.4, (Ferrosilicon, 10));

        var heel = HeelQuestion.Build(1000, Mean, [addition, tap]);

        Assert.Equal(509.4, heel.Kg, 9);
        Assert.Equal(100 * (7.5 + 6.9) / 509.4, heel.Percent(Element.Si), 9);
    }

    [Fact]
    public void Build_MoreTappedThanTheLedgerHas_LeavesNothing()
    {
        var heel = HeelQuestion.Build(100, Mean, [new(Sampled.AddMinutes(2), FurnaceMetalKind.Tapped, -120)]);

        Assert.Equal(0, heel.Kg);
    }
}

using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Charging.WhatIf;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.WhatIf;

/// <summary>What would have to be bought, by pencil and against GLPK.</summary>
public class PurchaseTests
{
    // 1000 kg with at most 0.2 % of copper from scrap with 0.5 %: 600 kg of something without copper are missing.
    private static readonly ChargeProblem TooMuchCopper = new()
    {
        MeltKg = 1000,
        Materials = [Material("scrap", 250, (Element.Cu, 0.5), (Element.C, 3))],
        Limits = [Limit(Element.Cu, null, 0.2)],
    };

    [Fact]
    public void Diluent_ThatIsOutOfStock_IsNamedWithItsLeastMass()
    {
        var buy = Of(TooMuchCopper, Material("pig", 480, (Element.Cu, 0.02)), Material("tramp", 200, (Element.Cu, 0.4)));

        // pig: 0.5 (1000 − m) + 0.02 m = 200, so m = 300 / 0.48.
        Assert.False(buy.IsUncertain);
        var pig = Assert.Single(buy.Possible);
        Assert.Equal("pig", pig.Code);
        Assert.Equal(625, pig.Kg, 1e-5);
        Assert.True(pig.Charge.Holds);
        Assert.Equal(375 * 0.25 + 625 * 0.48, pig.Charge.Costs.Total, 1e-4);
    }

    [Fact]
    public void Ideal_IsTheLeastOfPureMetal()
    {
        var ideal = Of(TooMuchCopper).Ideal!;

        Assert.Equal(600, ideal.Kg, 1e-5);
        Assert.Equal(0, ideal.Analysis.OrZero(Element.Cu), 1e-9);
    }

    [Fact]
    public void Ideal_BringsWhatTheOthersLack()
    {
        // Copper wants 600 kg that hold none; carbon wants 3.3 %, of which 400 kg of scrap bring 12 kg: 21 kg, 3.5 % of the 600.
        var ideal = Of(TooMuchCopper with { Limits = [.. TooMuchCopper.Limits, Limit(Element.C, 3.3, 3.4)] }).Ideal!;

        Assert.Equal(600, ideal.Kg, 1e-5);
        Assert.InRange(ideal.Analysis.OrZero(Element.C), 3.5 - 1e-6, 100.0 * 22 / 600 + 1e-6);
    }

    [Fact]
    public void Stock_ThatIsShort_SaysHowMuchMore()
    {
        var buy = Of(TooMuchCopper with { Materials = [.. TooMuchCopper.Materials, Material("pig", 480, (Element.Cu, 0.02)) with { AvailableKg = 400 }] });

        Assert.Equal(225, Assert.Single(buy.Possible).Kg, 1e-5);
        // 400 kg of pig are used, so less of the ideal is missing: 0.5 (600 − m) + 8 = 200 kg·%.
        Assert.Equal(600 - 192 / 0.5, buy.Ideal!.Kg, 1e-5);
    }

    [Fact]
    public void TooLittleStockInAll_IsAMassToBuy()
    {
        var buy = Of(TooMuchCopper with { Limits = [], Materials = [TooMuchCopper.Materials[0] with { AvailableKg = 700 }] });

        Assert.Equal(300, Assert.Single(buy.Possible).Kg, 1e-5);
        Assert.Equal(300, buy.Ideal!.Kg, 1e-5);
    }

    [Fact]
    public void APossibleCharge_NeedsNothing()
    {
        var buy = Of(TooMuchCopper with { Limits = [Limit(Element.Cu, null, 0.6)] }, Material("pig", 480, (Element.Cu, 0.02)));

        Assert.Empty(buy.Possible);
        Assert.Null(buy.Ideal);
    }

    [Fact]
    public void SharesThatNothingMends_HaveNoAnswer()
    {
        var buy = Of(TooMuchCopper with { Materials = [TooMuchCopper.Materials[0] with { MinPercent = 60 }] }, Material("pig", 480, (Element.Cu, 0.02)));

        Assert.Empty(buy.Possible);
        Assert.Null(buy.Ideal);
    }

    [Fact]
    public void SeveralThatDo_ComeInOrderOfTheChargesCost()
    {
        var buy = Of(TooMuchCopper, Material("pig", 480, (Element.Cu, 0.02)), Material("steel", 330, (Element.Cu, 0.1)));

        Assert.Equal(["steel", "pig"], buy.Possible.Select(p => p.Code));
        Assert.Equal(750, buy.Possible[0].Kg, 1e-5);
    }

    [Fact]
    public void ACodeThatIsThereAlready_IsRefused() => Assert.Throws<ArgumentException>(() => Of(TooMuchCopper, Material("scrap", 1)));

    [Fact]
    public async Task RandomYards_ThatAreImpossible_LackWhatGlpkSays()
    {
        var (compared, faults) = (0, new List<string>());
        foreach (var seed in Enumerable.Range(1, 40))
        {
            var (count, found) = await PurchaseComparison.Of(seed, TestContext.Current.CancellationToken);
            compared += count;
            faults.AddRange(found);
        }

        Assert.Empty(faults);
        Assert.InRange(compared, 5, int.MaxValue);
    }

    private static WhatToBuy Of(ChargeProblem problem, params ChargeMaterial[] offered) => Purchases.Of(problem, offered, TestContext.Current.CancellationToken);
}

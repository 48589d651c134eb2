using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.WhatIf;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.WhatIf;

/// <summary>A material runs out: 1000 kg at 1.5 to 1.7 % of Si from a (1 %, 300), b (2 %, 400) and c (1 %, 340).</summary>
public class RunningOutTests
{
    private static readonly ChargeProblem Three = new()
    {
        MeltKg = 1000,
        Materials = [Material("a", 300, (Element.Si, 1)), Material("b", 400, (Element.Si, 2)), Material("c", 340, (Element.Si, 1))],
        Limits = [Limit(Element.Si, 1.5, 1.7)],
    };

    [Fact]
    public void CheapestMaterial_RunsOut_TheNextOneTakesItsPlace()
    {
        var code = RunningOut.CheapestUsed(Three, ChargeOptimiser.Plan(Three, TestContext.Current.CancellationToken));
        var out_ = RunningOut.Of(Three, code!, cancellation: TestContext.Current.CancellationToken);

        Assert.Equal("a", out_.Code);
        Assert.Equal(20, out_.ExtraCost!.Value, 1e-6);
        Assert.Equal(["a", "c"], out_.Changes.Select(c => c.Code));
        Assert.Equal((500.0, 0.0), (Math.Round(out_.Changes[0].BeforeKg, 6), Math.Round(out_.Changes[0].AfterKg, 6)));
        Assert.False(out_.MakesItImpossible);
    }

    [Fact]
    public void PartOfIt_IsLeft_IsUsedUp()
    {
        var out_ = RunningOut.Of(Three, "a", leftKg: 150, TestContext.Current.CancellationToken);

        Assert.Equal(14, out_.ExtraCost!.Value, 1e-6);
        Assert.Equal(150, out_.Changes[0].AfterKg, 1e-6);
    }

    [Fact]
    public void WeighedAlready_StaysIn()
    {
        var out_ = RunningOut.Of(Three with { WeighedKg = new Dictionary<string, double> { ["a"] = 200 } }, "a", leftKg: 100, TestContext.Current.CancellationToken);

        Assert.Equal(300, Assert.Single(out_.Changes, c => c.Code == "a").AfterKg, 1e-6);
    }

    [Fact]
    public void WithoutIt_NothingMeetsTheGrade_SaysWhatClashes()
    {
        var out_ = RunningOut.Of(Three, "b", cancellation: TestContext.Current.CancellationToken);

        Assert.True(out_.MakesItImpossible);
        Assert.Null(out_.ExtraCost);
        Assert.Empty(out_.Changes);
        Assert.Equal(("Si", "min"), (Assert.Single(out_.After.Conflicts).Quantity, out_.After.Conflicts[0].Bound));
    }

    [Fact]
    public void WhatWasCompulsoryOfIt_IsSoOnlyAsFarAsItIsThere()
    {
        var compulsory = Three with { Materials = [Three.Materials[0] with { MinKg = 100, MinPercent = 20 }, .. Three.Materials.Skip(1)] };

        Assert.Equal(PlanStatus.Optimal, RunningOut.Of(compulsory, "a", cancellation: TestContext.Current.CancellationToken).After.Status);
    }

    [Fact]
    public void AStockThatIsLessThanWhatIsLeft_Stands()
    {
        var short_ = Three with { Materials = [Three.Materials[0] with { AvailableKg = 50 }, .. Three.Materials.Skip(1)] };

        Assert.Equal(0, RunningOut.Of(short_, "a", leftKg: 400, TestContext.Current.CancellationToken).ExtraCost!.Value, 1e-9);
    }

    [Theory]
    [InlineData("z", 0)]
    [InlineData("a", -1)]
    [InlineData("a", double.NaN)]
    public void Nonsense_IsRefused(string code, double leftKg) => Assert.Throws<ArgumentException>(() => RunningOut.Of(Three, code, leftKg, TestContext.Current.CancellationToken));
}

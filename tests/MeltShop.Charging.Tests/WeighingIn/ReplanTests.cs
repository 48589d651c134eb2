using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Charging.WeighingIn;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.WeighingIn;

/// <summary>A charge half weighed in, worked out by pencil: a holds 1 % of Si, b 2 %, c 4 %; 1000 kg wanted.</summary>
public class ReplanTests
{
    private static ChargeProblem Problem(params (string Code, double Kg)[] weighed) => new()
    {
        MeltKg = 1000,
        Materials = [Material("a", 300, (Element.Si, 1)), Material("b", 400, (Element.Si, 2)), Material("c", 900, (Element.Si, 4))],
        Limits = [Limit(Element.Si, 1.5, 1.7)],
        WeighedKg = weighed.ToDictionary(w => w.Code, w => w.Kg),
    };

    [Fact]
    public void NothingWeighed_PlansTheWholeCharge()
    {
        var rest = Of(Problem());

        Assert.True(rest.IsReachable);
        Assert.Equal(("a", 500.0, "b", 500.0), (rest.ToGo[0].Code, Math.Round(rest.ToGo[0].ToGoKg, 6), rest.ToGo[1].Code, Math.Round(rest.ToGo[1].ToGoKg, 6)));
    }

    [Fact]
    public void Overweighed_TheRestMakesUpForIt()
    {
        // 700 kg of a instead of 500: the rest of 300 kg has to bring 1500 − 700 = 800 kg·%, so 200 kg of b and 100 kg of c.
        var rest = Of(Problem(("a", 700)));

        Assert.True(rest.IsReachable);
        Assert.Equal(["b", "c"], rest.ToGo.Select(l => l.Code));
        Assert.Equal(200, rest.ToGo[0].ToGoKg, 1e-6);
        Assert.Equal(100, rest.ToGo[1].ToGoKg, 1e-6);
        Assert.Equal(1.0, rest.StillPossible[0].Least!.Value, 1e-6);
        Assert.Equal(1.9, rest.StillPossible[0].Most!.Value, 1e-6);
    }

    [Fact]
    public void OverweighedTooFar_IsUnreachableAndDoesTheLeastHarm()
    {
        // 900 kg of a: 100 kg of c bring 1.3 % at most. Half the window is 0.1 point, worth one percent of the melt, 10 kg: more liquid costs more harm than it mends.
        var rest = Of(Problem(("a", 900)));

        Assert.False(rest.IsReachable);
        Assert.Equal(PlanStatus.Infeasible, rest.Plan.Status);
        var miss = Assert.Single(rest.Charge!.Misses);
        Assert.Equal((MissKind.Quantity, "Si", false), (miss.Kind, miss.Name, miss.IsMax));
        Assert.Equal(1.3, miss.Value, 1e-5);
        Assert.Equal(0.2, miss.By, 1e-5);
        Assert.Equal("c", Assert.Single(rest.ToGo).Code);
    }

    // 900 kg of a: 180 kg of c bring 1.5 % into 1080 kg, and silicon off its window is a hundred times the harm. A furnace of 1050 kg takes 150 kg: 1500/1050 = 1.428571 %.
    // One of 800 kg holds too much already.
    [Theory]
    [InlineData(null, 180, 1.5)]
    [InlineData(1050.0, 150, 1.428571)]
    [InlineData(800.0, 0, 1)]
    public void LeastHarm_NeverGoesBeyondWhatTheFurnaceHolds(double? capacityKg, double ofC, double silicon)
    {
        var problem = Problem(("a", 900));
        var rest = Of(problem with { Limits = [problem.Limits[0] with { HarmWeight = 100 }], CapacityKg = capacityKg });

        Assert.Equal(ofC, rest.ToGo.Sum(l => l.ToGoKg), 1e-3);
        Assert.Equal(silicon, rest.Charge!.Limits[0].Value, 1e-5);
        Assert.Equal(900 + ofC, rest.Charge.LiquidKg, 1e-3);
    }

    [Fact]
    public void WeighedOverAGreatestMass_StandsAndIsNamed()
    {
        var problem = Problem(("b", 320));
        var rest = Of(problem with { Materials = [.. problem.Materials.Select(m => m.Code == "b" ? m with { MaxKg = 300, AvailableKg = 310 } : m)] });

        Assert.True(rest.IsReachable);
        var miss = Assert.Single(rest.Charge!.Misses);
        Assert.Equal((MissKind.MaterialKg, "b", true, 300.0), (miss.Kind, miss.Name, miss.IsMax, miss.Asked));
        Assert.DoesNotContain(rest.ToGo, l => l.Code == "b");
    }

    [Fact]
    public void MoreThanTheMeltWeighed_SaysHowMuchLiquidIsOver()
    {
        var rest = Of(Problem(("a", 550), ("b", 550)));

        Assert.False(rest.IsReachable);
        var miss = Assert.Single(rest.Charge!.Misses);
        Assert.Equal((MissKind.LiquidKg, true), (miss.Kind, miss.IsMax));
        Assert.Equal(100, miss.By, 1e-6);
        Assert.Empty(rest.ToGo);
    }

    // 950 kg of a and steel for the last 50 kg are 0.951 % of Si. A kilogram of sulphide or tin in the steel's place moves that by 0.00002 %, three ten-thousandths of what counts
    // as one harm, and has room under its limit.
    [Theory]
    [InlineData(690)]
    [InlineData(30800)]
    public void LeastHarm_ForTheLastDigitOfALimit_BuysNothing(double price)
    {
        var problem = Problem(("a", 950));
        var rest = Of(problem with
        {
            Materials = [problem.Materials[0], Material("steel", 320, (Element.Si, 0.02)), Material("trace", price, (Element.S, 30))],
            Limits = [Limit(Element.Si, null, 0.7), Limit(Element.S, null, 0.05)],
        });

        Assert.Equal(("steel", 50.0), (Assert.Single(rest.ToGo).Code, Math.Round(rest.ToGo[0].ToGoKg, 6)));
    }

    // a is to give way to c: 100 kg of it at 1.2 % are worth 0.2 of harm, and at such a price a whole charge. The last 25 kg are worth 0.05.
    [Fact]
    public void LeastHarm_AtAnyPrice_IsMissedByNoMoreThanALaboratorySees()
    {
        var problem = Problem(("a", 900));
        var rest = Of(problem with { Materials = [problem.Materials[0], Material("c", 1e6, (Element.Si, 1.2))] });

        Assert.Equal([("a", 25.0), ("c", 75.0)], rest.ToGo.Select(l => (l.Code, Math.Round(l.ToGoKg, 4))));
    }

    // a and b are to bring more together than the melt holds. A kilogram does the same harm in each row: what costs least stays.
    [Theory]
    [InlineData(600, 600, 0, null, 600, 400)]
    [InlineData(600, 600, 550, null, 450, 550)] // what is in stays in, and the other gives way
    [InlineData(700, 500, 0, 250.0, 500, 500)] // a piece less would be 250 kg for the 200 that are over
    public void LeastMasses_OverTheMelt_GiveWayByTheLeast(double aLeastKg, double bLeastKg, double bWeighedKg, double? bPieceKg, double aKg, double bKg)
    {
        var problem = Problem(("b", bWeighedKg)) with { Limits = [] };
        var rest = Of(problem with
        {
            Materials = [problem.Materials[0] with { MinKg = aLeastKg }, problem.Materials[1] with { MinKg = bLeastKg, PieceKg = bPieceKg }],
        });

        Assert.False(rest.IsReachable);
        Assert.Equal([("a", aKg), ("b", bKg)], rest.Charge!.Lines.Select(l => (l.Code, Math.Round(l.Kg, 6))));
        Assert.All(rest.Charge.Misses, m => Assert.Equal((MissKind.MaterialKg, false), (m.Kind, m.IsMax)));
        Assert.Equal(200, rest.Charge.Misses.Sum(m => m.By), 1e-6);
    }

    [Fact]
    public void Share_ThatClashesWithALimit_StandsWhereThatDoesLessHarm()
    {
        // At most 40 % of a make 1.6 % of Si at least. Half the window, 0.1 point, is as bad as five points of a share: a tenth of that limit for a
        // point more of b, a fifth for a point more of a.
        var problem = Problem();
        var rest = Of(problem with { Materials = [problem.Materials[0] with { MaxPercent = 40 }, problem.Materials[1]], Limits = [Limit(Element.Si, 1.3, 1.5)] });

        Assert.False(rest.IsReachable);
        Assert.Equal([("a", 400.0), ("b", 600.0)], rest.Charge!.Lines.Select(l => (l.Code, Math.Round(l.Kg, 4))));
        Assert.Equal((MissKind.Quantity, true), (Assert.Single(rest.Charge.Misses).Kind, rest.Charge.Misses[0].IsMax));
    }

    [Fact]
    public void Pieces_OfWhichAnOddMassIsIn_GoOnInWholePieces()
    {
        var problem = Problem(("b", 130));
        var rest = Of(problem with { MeltToleranceKg = 20, Materials = [.. problem.Materials.Select(m => m.Code == "b" ? m with { PieceKg = 100 } : m)] });

        Assert.True(rest.IsReachable);
        var pieces = rest.ToGo.Where(l => l.Code == "b").Sum(l => l.ToGoKg) / 100;
        Assert.Equal(Math.Round(pieces), pieces, 1e-6);
    }

    [Fact]
    public void EditedCharge_IsCheckedAndNotChanged()
    {
        var check = ChargeCheck.Of(Problem(), new Dictionary<string, double> { ["a"] = 800, ["b"] = 100 });

        Assert.Equal([("a", 800.0), ("b", 100.0)], check.Lines.Select(l => (l.Code, l.Kg)));
        Assert.Equal([(MissKind.LiquidKg, false, 100.0), (MissKind.Quantity, false, 0.388889)], check.Misses.Select(m => (m.Kind, m.IsMax, Math.Round(m.By, 6))));
        Assert.Equal(280, check.Costs.Total, 1e-9);
    }

    /// <summary>Si + 10 · (S − 0.02) from 1.5 to 1.7: without sulphur that is a window of 1.7 to 1.9 % for the silicon itself.</summary>
    [Fact]
    public void Miss_OfAnElementThatFollowsTheSulphur_IsToldInItsOwnPercent()
    {
        var silicon = new LinearQuantity("Si", new Dictionary<Element, double> { [Element.Si] = 1, [Element.S] = 10 }, -0.2);

        var check = ChargeCheck.Of(Problem() with { Limits = [new(silicon, 1.5, 1.7)] }, new Dictionary<string, double> { ["a"] = 500, ["b"] = 500 });

        var miss = Assert.Single(check.Misses);
        Assert.Equal(("Si", false, 1.7, 1.5, 0.2), (miss.Name, miss.IsMax, Math.Round(miss.Asked, 6), Math.Round(miss.Value, 6), Math.Round(miss.By, 6)));
    }

    [Fact]
    public void Heel_FarOffTheGrade_CostsWhatDrainingSaves()
    {
        // 200 kg without silicon: the other 800 kg have to bring 1500 kg·%, a 100 + b 700 for 310. Drained: a 500 + b 500 for 350. The metal in the
        // heel's place is paid for, and the heel is worth 50 at 250 per tonne.
        var comparison = HeelDraining.Compare(Problem() with { Heel = Metal.Of(200, Analysis.Of((Element.Si, 0))) }, 250, TestContext.Current.CancellationToken);

        Assert.Equal(310, comparison.WithHeel.TotalCost, 1e-6);
        Assert.Equal(350, comparison.Drained.TotalCost, 1e-6);
        Assert.Equal(310 - (350 - 50), comparison.Saving!.Value, 1e-6);
    }

    [Fact]
    public void Heel_ThatMakesTheGradeImpossible_SaysThatDrainingMakesItPossible()
    {
        var comparison = HeelDraining.Compare(Problem() with { Heel = Metal.Of(900, Analysis.Of((Element.Si, 0.5))) }, 0, TestContext.Current.CancellationToken);

        Assert.True(comparison.MakesItPossible);
        Assert.Null(comparison.Saving);
    }

    private static RestOfCharge Of(ChargeProblem problem) => Replan.Of(problem, TestContext.Current.CancellationToken);
}

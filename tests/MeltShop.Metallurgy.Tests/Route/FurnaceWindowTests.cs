using CsCheck;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Metallurgy.Tests.Treatment;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Route;

public class FurnaceWindowTests
{
    private static readonly MaterialComposition Ferrosilicon = new()
    {
        Analysis = Analysis.Of((Element.Si, 75)),
        RecoveryPercent = new Dictionary<Element, double> { [Element.Si] = 90 },
    };

    private static readonly MaterialComposition Steel = new() { Analysis = Analysis.Of((Element.C, 0.1), (Element.Mn, 0.4)) };

    private static PouringRoute Route(double sulphur = 0.015, double cover = 1, double inoculant = 0.4) => new(
        new(TreatmentCases.Printed().Recipe, 1450, 0.045, 5, sulphur, new(Steel, cover)),
        [new(Ferrosilicon, inoculant)]);

    [Fact]
    public void For_DuctileSilicon_LeavesRoomForAlloyAndInoculant()
    {
        // Public teaching notes on ductile iron: base iron of 1.3 to 2.0 % Si ends at 2.2 to 2.8 % after treatment and inoculation.
        var silicon = FurnaceWindow.For(Route(), [new(LinearQuantity.Of(Element.Si), new(2.2, 2.5, 2.8))]).Rows[0].Bounds;

        Assert.InRange(silicon.Least!.Value, 1.1, 1.3);
        Assert.InRange(silicon.Most!.Value, 1.7, 2.0);
        Assert.InRange(silicon.Aim!.Value, silicon.Least.Value, silicon.Most.Value);
    }

    [Fact]
    public void For_CoverSteel_AsksForTheCarbonThatItDilutes()
    {
        // By hand: one percent of steel takes 3.60 % C down by 3.60·(1 − 1/1.01) = 0.036.
        PouringRoute route = new(null, [new(new() { Analysis = Analysis.Empty }, 1)]);

        Assert.Equal(3.564, route.Poured(Metal.Of(1000, Analysis.Of((Element.C, 3.60))))!.Percent(Element.C), 3);
        Assert.Equal(3.60 * 1.01, FurnaceWindow.For(route, [new(LinearQuantity.Of(Element.C), new(Aim: 3.60))]).Rows[0].Bounds.Aim!.Value, 12);
    }

    [Fact]
    public void For_TreatedRoute_BoundsSulphurAndLeavesMagnesiumToTheTreatment()
    {
        var window = FurnaceWindow.For(Route(), [
            new(LinearQuantity.Of(Element.Mg), new(0.035, 0.045, 0.055)), new(LinearQuantity.Of(Element.S), new(Most: 0.015)), new(LinearQuantity.Of(Element.C), new(3.5, 3.6, 3.7)),
        ]);

        Assert.Equal(["C", "S"], window.Rows.Select(r => r.Quantity.Name));
        Assert.Equal(0.015, window.Rows[1].Bounds.Most);
        Assert.Empty(window.Findings);
    }

    [Fact]
    public void For_SulphurLeftOutsideItsWindow_IsFound() => Assert.Equal(
        "route.sulphur", Assert.Single(FurnaceWindow.For(Route(), [new(LinearQuantity.Of(Element.S), new(Most: 0.005))]).Findings).Code);

    [Fact]
    public void For_SiliconThatTheRouteAloneExceeds_IsFound()
    {
        var window = FurnaceWindow.For(Route(), [new(LinearQuantity.Of(Element.Si), new(Most: 0.5))]);

        Assert.Equal(("Si", "route.tooMuch"), (window.Findings.Single().Path, window.Findings.Single().Code));
    }

    [Fact]
    public void For_LeastThatTheRouteAloneBrings_IsNoBound() =>
        Assert.Null(FurnaceWindow.For(Route(), [new(LinearQuantity.Of(Element.Si), new(0.5, 2.4, 2.8))]).Rows[0].Bounds.Least);

    [Fact]
    public void For_AlloyThatCannotReachTheMagnesium_GivesNoWindow()
    {
        var recipe = TreatmentCases.Printed().Recipe with { MgRecoveryPercent = 0 };
        var window = FurnaceWindow.For(new(new(recipe, 1450, 0.045, 5, 0.015), []), [new(LinearQuantity.Of(Element.C), new(3.5))]);

        Assert.Equal("route.noAlloy", window.Findings.Single().Code);
        Assert.Empty(window.Rows);
    }

    [Fact]
    public void For_AnyRoute_BackThenForwardIsTheSameIron() => Law.Holds(
        Gen.Select(TreatmentCases.Any, Gen.Double[0, 2], Gen.Double[0, 1], Gen.Double[3, 4], Gen.Double[1, 3], Gen.Double[0, 1]),
        one =>
        {
            var (ladle, cover, rate, carbon, silicon, manganese) = one;
            var sulphur = ladle.BaseAnalysis.OrZero(Element.S);
            PouringRoute route = new(
                new(ladle.Recipe, ladle.TemperatureC, ladle.TargetMgPercent, ladle.AtMinutes, sulphur, new(Steel, cover)), [new(Ferrosilicon, rate)]);
            var furnace = Analysis.Of((Element.C, carbon), (Element.Si, silicon), (Element.Mn, manganese), (Element.S, sulphur));
            if (route.Poured(Metal.Of(ladle.IronKg, furnace)) is not { } poured) return;

            // A window that the poured iron exactly meets, elements and derived quantities alike, is exactly met by the furnace iron.
            QuantityBounds[] rows = [.. new[]
            {
                LinearQuantity.Of(Element.C), LinearQuantity.Of(Element.Si), LinearQuantity.Of(Element.Mn), CarbonEquivalent.Default.Quantity,
                PearliteFactor.Quantity, ManganeseBalance.Quantity, CarbonEquivalent.Find("CE-d")!.Quantity,
            }.Select(q => new QuantityBounds(q, new(Aim: q.Value(poured.Analysis))))];

            var window = FurnaceWindow.For(route, rows);
            Assert.All(window.Rows.Where(r => r.Bounds.Aim is not null), r => Law.Near(r.Bounds.Aim!.Value, r.Quantity.Value(furnace)));
            Assert.Equal(rows.Length + 1, window.Rows.Count);
        });

    [Fact]
    public void For_GreyIron_TreatsSulphurLikeAnyElement()
    {
        var window = FurnaceWindow.For(new(null, [new(Ferrosilicon, 0.2)]), [new(LinearQuantity.Of(Element.S), new(0.06, 0.08, 0.10))]);

        Assert.Equal(0.08 * 1.00185, Assert.Single(window.Rows).Bounds.Aim!.Value, 9);
    }
}

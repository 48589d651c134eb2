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

    [Theory]
    [InlineData("Si", 1.62, -0.12)] // read at the most sulphur; there is 1.5 %
    [InlineData("S", 0.02, -0.02)] // not measured counts as nothing
    [InlineData("CE", 4.3, 0)] // a derived quantity reads as it is
    public void ToOwnPercent_BringsTheReadingOfAnElementToWhatThereIs(string name, double reads, double points) =>
        Assert.Equal(points, FurnaceWindow.ToOwnPercent(name, reads, Analysis.Of((Element.C, 3.6), (Element.Si, 1.5))), 1e-12);

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
    public void For_LessSulphurThanTheMost_AsksForTheSiliconThatLessAlloyDoesNotBring()
    {
        // By hand, 6 % Mg at 48 %, 45 % Si at 95 %, 0.052 % Mg at minute 0, 0.006 % S left: a = (0.00052 − 0.7581·0.00006)/0.99942 = 0.00047478, of the alloy 0.9175
        // beside magnesium, so that a kilogram of sulphur takes (0.7581 − 0.0005)/(0.0288 − 0.00047478·0.9175) = 26.71 kg of alloy. It brings 26.71·0.4275 = 11.42 kg
        // of silicon, and (26.71·0.9175 − 1)/0.99942 = 23.52 kg of iron in all, of which 2.5 % have to be silicon: 11.42 − 0.59 = 10.83.
        TreatmentRecipe recipe = new()
        {
            Alloy = new() { Analysis = Analysis.Of((Element.Mg, 6), (Element.Si, 45)), RecoveryPercent = new Dictionary<Element, double> { [Element.Si] = 95 } },
            MgRecoveryPercent = 48, Fade = new Fade.Linear(0.0012), SulphurLeftPercent = 0.006,
        };
        var silicon = FurnaceWindow.For(new(new(recipe, 1450, 0.04, 10, 0.014), []), [new(LinearQuantity.Of(Element.Si), new(2.4, 2.5, 2.6))]).Rows[0].Quantity;

        Assert.Equal(10.83, silicon.Terms[Element.S], 2);
        Assert.Equal(1.6, silicon.Value(Analysis.Of((Element.Si, 1.6), (Element.S, 0.014))), 9);
        Assert.Equal(1.6 - 0.065, silicon.Value(Analysis.Of((Element.Si, 1.6), (Element.S, 0.008))), 4);
    }

    [Fact]
    public void For_AnyRouteWithLessSulphurThanTheMost_BackThenForwardIsTheSameIron() => Law.Holds(
        Gen.Select(TreatmentCases.Any, Gen.Double[0, 2], Gen.Double[0, 1], Gen.Double[3, 4], Gen.Double[1, 3], Gen.Double[0.15, 1]),
        one =>
        {
            var (ladle, cover, rate, carbon, silicon, share) = one;
            var (least, most) = (1.1 * ladle.Recipe.SulphurLeftPercent, 1.1 * ladle.Recipe.SulphurLeftPercent + 0.02);
            var sulphur = least + share * (most - least);
            PouringRoute Planned(double with) => new(
                new(ladle.Recipe, ladle.TemperatureC, ladle.TargetMgPercent, ladle.AtMinutes, with, new(Steel, cover)), [new(Ferrosilicon, rate)]);
            var furnace = Analysis.Of((Element.C, carbon), (Element.Si, silicon), (Element.Mn, 0.3), (Element.S, sulphur));
            if (Planned(sulphur).Poured(Metal.Of(1000, furnace)) is not { } poured || Planned(most).Poured(Metal.Of(1, furnace)) is null) return;

            QuantityBounds[] rows = [.. new[] { LinearQuantity.Of(Element.C), LinearQuantity.Of(Element.Si), CarbonEquivalent.Default.Quantity, PearliteFactor.Quantity }
                .Select(q => new QuantityBounds(q, new(Aim: q.Value(poured.Analysis))))];

            var window = FurnaceWindow.For(Planned(most), rows);
            Assert.All(window.Rows.Where(r => r.Bounds.Aim is not null), r => Law.Near(r.Bounds.Aim!.Value, r.Quantity.Value(furnace)));
        });

    [Fact]
    public void For_GreyIron_TreatsSulphurLikeAnyElement()
    {
        var window = FurnaceWindow.For(new(null, [new(Ferrosilicon, 0.2)]), [new(LinearQuantity.Of(Element.S), new(0.06, 0.08, 0.10))]);

        Assert.Equal(0.08 * 1.00185, Assert.Single(window.Rows).Bounds.Aim!.Value, 9);
    }
}

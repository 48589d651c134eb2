using CsCheck;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Tests.Chain;

public class BackwardSteps
{
    private static readonly Gen<Metal> Baths =
        from kg in Gen.Double[100, 10_000]
        from c in Gen.Double[2.5, 4.2]
        from si in Gen.Double[0.8, 3]
        from mn in Gen.Double[0, 1]
        from s in Gen.Double[0.06, 0.15]
        select Metal.Of(kg, Analysis.Of((Element.C, c), (Element.Si, si), (Element.Mn, mn), (Element.S, s)));

    private static readonly MeltingLoss Cupola = new()
    {
        LossPercent = new Dictionary<Element, double> { [Element.Si] = 10, [Element.Mn] = 20 },
        PickUpPoints = new Dictionary<Element, double> { [Element.C] = 0.15, [Element.S] = 0.05 },
    };

    [Fact]
    public void MeltingLoss_BackThenForward_IsTheSameMetal() => Law.Holds(Baths, wanted =>
    {
        var got = Cupola.After(Cupola.Before(wanted)!);

        Same(wanted, got);
        Assert.True(Cupola.Before(wanted)!.Percent(Element.Si) > wanted.Percent(Element.Si));
    });

    [Fact]
    public void MeltingLoss_WhatCannotBe_HasNoMetalBefore()
    {
        var bath = Metal.Of(100, Analysis.Of((Element.C, 3.5), (Element.S, 0.04), (Element.Mg, 0.04)));
        MeltingLoss burnt = new() { LossPercent = new Dictionary<Element, double> { [Element.Mg] = 100 } };

        Assert.Null(Cupola.Before(bath)); // picks up more sulphur than is wanted
        Assert.Null(burnt.Before(bath)); // all magnesium burns off, yet some is wanted
        Assert.Same(bath, new MeltingLoss().Before(bath));
        Assert.Equal(3.5, burnt.Before(Metal.Of(100, Analysis.Of((Element.C, 3.5))))!.Percent(Element.C), 12);

        // All of the sulphur is picked up: 0.05 of 100 kg.
        MeltingLoss coke = new() { PickUpPoints = new Dictionary<Element, double> { [Element.S] = 0.05 } };
        var clean = coke.Before(coke.After(Metal.Of(100, Analysis.Of((Element.C, 3.5)))))!;
        Assert.Equal(100, clean.Kg, 9);
        Assert.Equal(0, clean.ElementKg(Element.S), 9);
    }

    [Fact]
    public void CrucibleHolding_BackThenForward_IsTheSameBath() => Law.Holds(Gen.Select(Baths, Gen.Double[-0.002, 0.01]), one =>
    {
        var (bath, share) = one;
        CrucibleHolding held = new(share * bath.Kg);
        var after = held.After(bath);

        Same(bath, held.Before(after));
        Law.Close(bath.Kg - held.CarbonLostKg + CrucibleReaction.SiliconChange(-held.CarbonLostKg), after.Kg);
    });

    [Fact]
    public void CrucibleHolding_CarbonLost_BringsSilicon()
    {
        // By hand: 0.5 kg of carbon leaves 1000 kg, 0.5 · 28.085/(2 · 12.011) = 0.5846 kg of silicon comes in.
        var after = new CrucibleHolding(0.5).After(Metal.Of(1000, Analysis.Of((Element.C, 3.5), (Element.Si, 2.0))));

        Assert.Equal(34.5, after.ElementKg(Element.C), 12);
        Assert.Equal(20.58457, after.ElementKg(Element.Si), 5);
        Assert.Equal(1000.08457, after.Kg, 5);
        Assert.Throws<ArgumentOutOfRangeException>(() => new CrucibleHolding(40).After(Metal.Of(1000, Analysis.Of((Element.C, 3.5)))));
    }

    [Fact]
    public void MixedKg_TwoLadles_ReachTheTarget() => Law.Holds(Gen.Select(Baths, Baths, Gen.Double[0.05, 0.95]), one =>
    {
        var (first, second, share) = one;
        var target = first.Percent(Element.C) + share * (second.Percent(Element.C) - first.Percent(Element.C));
        if (Math.Abs(first.Percent(Element.C) - second.Percent(Element.C)) < 0.01) return;
        var kg = Addition.MixedKg(first, second, Element.C, target)!.Value;

        // By hand: m = M (x_t − x_0)/(x − x_t).
        Law.Close(first.Kg * share / (1 - share), kg, 1e-7);
        Law.Close(target, first.Plus(Metal.Of(kg, second.Analysis)).Percent(Element.C));
    });

    [Fact]
    public void Plus_OverCarbonCase_ReachesBothTargets()
    {
        // Own case, by hand: 3 t of 3.60 % C and 1.70 % Si to 3.40 and 2.00 with steel (0.10 C, 0.15 Si, recoveries 95, yield 98) and ferrosilicon.
        var steel = Arrival.PerKilogram(new()
        {
            Analysis = Analysis.Of((Element.C, 0.10), (Element.Si, 0.15)),
            MetallicYieldPercent = 98,
            RecoveryPercent = new Dictionary<Element, double> { [Element.C] = 95, [Element.Si] = 95 },
        });
        var ferrosilicon = Arrival.PerKilogram(new()
        {
            Analysis = Analysis.Of((Element.C, 0.1), (Element.Si, 75), (Element.Mn, 0.3)),
            RecoveryPercent = new Dictionary<Element, double> { [Element.C] = 90, [Element.Si] = 92, [Element.Mn] = 90 },
        });
        var after = Metal.Of(3_000, Analysis.Of((Element.C, 3.60), (Element.Si, 1.70))).Plus(steel, 168.0488).Plus(ferrosilicon, 17.9656);

        Assert.Equal(3_181.548, after.Kg, 3);
        Assert.Equal(3.40, after.Percent(Element.C), 6);
        Assert.Equal(2.00, after.Percent(Element.Si), 5);
    }

    private static void Same(Metal expected, Metal actual)
    {
        Law.Close(expected.Kg, actual.Kg);
        Assert.All(expected.Elements, e => Law.Near(expected.ElementKg(e), actual.ElementKg(e), 1e-9 * expected.Kg));
    }
}

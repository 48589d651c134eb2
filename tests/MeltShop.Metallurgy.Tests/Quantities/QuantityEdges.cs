using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Heat;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Tests.Quantities;

/// <summary>Values exactly on a bound, where a sign or a comparison could slip unseen.</summary>
public class QuantityEdges
{
    [Fact]
    public void Metal_NothingLeft_HasNoPercents()
    {
        var none = Metal.Of(10, Analysis.Of((Element.C, 3.5))).Less(10);

        Assert.Equal(Analysis.Empty, none.Analysis);
        Assert.Equal(0, none.Less(0).ElementKg(Element.C));
        Assert.Equal(0, none.Percent(Element.C));
    }

    [Fact]
    public void Analysis_HundredAndItsTolerance_IsSound()
    {
        Assert.Empty(Analysis.Check([new(Element.Si, 100 + Analysis.SumTolerance)], "analysis"));
        Assert.Equal("percent.over100", Assert.Single(Analysis.Check([new(Element.Si, 100 + 2e-9)], "analysis")).Code);
    }

    [Fact]
    public void Finding_AsText_NamesItsArguments()
    {
        Assert.Equal("ironKg: mass.notPositive", new Finding("ironKg", "mass.notPositive").ToString());
        Assert.Equal("flotation: wall.flotation (4.6, 4.33)", FormattableString.Invariant($"{new Finding("flotation", "wall.flotation", "4.6", "4.33")}"));
    }

    [Fact]
    public void Crucible_ExactlyAtATemperature_IsStill()
    {
        Assert.Equal(HoldingDrift.Still, CrucibleReaction.Drift(3.5, 2.0, CrucibleReaction.EquilibriumC(3.5, 2.0)));
        Assert.Equal(HoldingDrift.Still, CrucibleReaction.Drift(3.5, 2.0, CrucibleReaction.BoilingC(3.5, 2.0)));
        Assert.True(double.IsNaN(CrucibleReaction.EquilibriumC(0, 2.0)));
    }

    [Fact]
    public void Saturation_NoEutecticCarbonLeft_HasNoDegree() => Assert.True(double.IsNaN(Saturation.Degree(3, 12.78, 0)));

    [Fact]
    public void Solubility_EveryElement_HasItsWeight()
    {
        // By hand: 1.30 + 3.7265 − 0.62 − 0.0165 − 0.036 + 0.0168.
        var analysis = Analysis.Of((Element.Si, 2), (Element.P, 0.05), (Element.S, 0.08), (Element.Mn, 0.6));

        Assert.Equal(4.3708, CarbonSolubility.MostPercent(1450, analysis), 10);
    }

    [Fact]
    public void Linear_OtherForm_IsTheRowOfThatForm()
    {
        Assert.False(DerivedQuantities.Linear(CarbonEquivalent.Find("CE-b"))[0].Terms.ContainsKey(Element.P));
        Assert.Equal(["CE", "CEL", "manganeseBalance", "pearliteFactor", "traceFactor"], DerivedQuantities.Linear().Select(q => q.Name));
        Assert.Equal("Sn, Ti, Al, As, Sb, Pb, Bi", DerivedQuantities.Of(Analysis.Empty)[7].Why!.Arguments[0]);
    }

    [Fact]
    [Printed("R. W. Heine, The Fe-C-Si Solidification Diagram for Cast Irons, AFS Transactions, 1986: ASM column of the equilibrium liquidus")]
    public void Liquidus_OfACup_LiesUnderTheEquilibrium()
    {
        // Equilibrium carbon 2.47, 3.02, 3.50, 3.93 at 1350, 1300, 1250, 1200 °C: a cup reads 21, 25, 22, 13 °C less at that carbon.
        Assert.Equal([21, 25, 22, 13], new[] { (1350, 2.47), (1300, 3.02), (1250, 3.50), (1200, 3.93) }.Select(p => Math.Round(p.Item1 - Liquidus.TemperatureC(p.Item2))));
    }

    [Fact]
    public void WallGuide_Ferritic_IsLowerInCarbonThanItsThinnerRow()
    {
        // J. D. Mullins, Sorelmetal Suggestion Sheet 84, ferritic columns; the last two rows could not be read.
        Assert.Equal(WallGuide.Rows.Take(19).Select(r => (r.FromMm, r.ToMm)), WallGuide.FerriticRows.Select(r => (r.FromMm, r.ToMm)));
        Assert.Equal((3.65, 2.70), (WallGuide.For(7, 20, isFerritic: true)!.CarbonPercent, WallGuide.For(7, 20, isFerritic: true)!.SiliconPercent));
        Assert.All(WallGuide.FerriticRows.Zip(WallGuide.Rows), pair => Assert.True(pair.First.SiliconPercent > pair.Second.SiliconPercent));
        Assert.Equal((12, 12), (WallGuide.For(12, 12)!.FromMm, WallGuide.For(12, 12)!.ToMm));
        Assert.Equal((3.60, 2.40), (WallGuide.For(13, 20)!.CarbonPercent, WallGuide.For(13, 20)!.SiliconPercent));
        Assert.Null(WallGuide.For(101, 110, isFerritic: true));
    }

    [Fact]
    public void Flotation_ThickWall_IsWarnedOf()
    {
        // By hand: the row 50–50 mm has 3.45 + 2.20/3 = 4.1833, with the margin of this app 4.3333.
        var finding = WallGuide.Flotation(Analysis.Of((Element.C, 3.60), (Element.Si, 2.40)), 50)!;

        Assert.Equal("wall.flotation", finding.Code);
        Assert.Equal([4.40, 4.3333, 50], finding.Arguments.Select(a => Math.Round((double)a, 4)));
        Assert.Null(WallGuide.Flotation(Analysis.Of((Element.C, 3.50), (Element.Si, 2.40)), 50));
        Assert.Null(WallGuide.Flotation(Analysis.Of((Element.C, 3.60), (Element.Si, 2.40)), 12));
        Assert.Equal([120.0, 100.0], WallGuide.Flotation(Analysis.Of((Element.C, 3.60), (Element.Si, 2.40)), 120)!.Arguments.Cast<double>());
        Assert.Equal("C, Si", WallGuide.Flotation(Analysis.Empty, 50)!.Arguments[0]);
        Assert.Equal("Si", WallGuide.Flotation(Analysis.Of((Element.C, 3.60)), 50)!.Arguments[0]);
    }

    [Fact]
    public void Heat_NoAdditions_ChangeNothing()
    {
        Assert.Equal(0, AdditionHeat.DropK(0, []));
        Assert.Equal(100, Metallurgy.Pouring.PouredMass.Kg(100, 100));
        Assert.Equal(3000 * 0.23 * 50 / 1000 / 0.7, MeltingEnergy.EnergyKWh(0, 1500, 70, heelKg: 3000, heelTemperatureC: 1450), 12); // a bath heated by 50 K, by hand
    }
}

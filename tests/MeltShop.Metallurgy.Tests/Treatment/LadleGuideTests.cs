using CsCheck;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Heat;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Treatment;

public class LadleGuideTests
{
    [Theory]
    [Printed("Giesserei-Lexikon, entry Magnesium master alloy; Elkem, Technical Information 20")]
    [InlineData("FeSiMg10", 8, 11, 45.0, 50.0)]
    [InlineData("FeSiMg30", 30, 32, 55.0, 60.0)]
    [InlineData("FeNiMg4", 4, 5, null, null)]
    [InlineData("NiMg4", 4, 5, null, null)]
    [InlineData("NiMg15", 14, 17, null, 3.0)]
    [InlineData("in-mould", 5.0, 6.0, 44.0, 48.0)]
    [InlineData("flow-through", 2.8, 3.5, 44.0, 48.0)]
    [InlineData("sandwich", 3.5, 4.0, 44.0, 48.0)]
    public void Alloy_Kind_HasThePrintedRanges(string name, double mgLeast, double mgMost, double? siLeast, double? siMost)
    {
        var alloy = AlloyGuide.All.Single(a => a.Name == name);

        Assert.Equal((mgLeast, mgMost), (alloy.MgLeast, alloy.MgMost));
        Assert.Equal((siLeast, siMost), (alloy.SiLeast, alloy.SiMost));
    }

    [Theory]
    [Printed("Elkem, Technical Information 20")]
    [InlineData(0.5, "5")]
    [InlineData(1.5, "5")]
    [InlineData(1.51, "10-or-low-silicon")]
    [InlineData(1.8, "10-or-low-silicon")]
    [InlineData(1.81, "low-silicon")]
    [InlineData(0.49, null)]
    public void Alloy_BaseSilicon_ChoosesAsPrinted(double silicon, string? expected) => Assert.Equal(expected, AlloyGuide.ForBaseSilicon(silicon));

    [Theory]
    [Printed("Giesserei-Lexikon, Magnesium residual content; Giesserei-Praxis, Magnesiumbehandlung and Magnesiumrestgehalt; a foundry's data page")]
    [InlineData("ductile-casting", 0.035, 0.055)]
    [InlineData("ready-to-pour", 0.04, 0.06)]
    [InlineData("practical-floor", 0.025, null)]
    [InlineData("compacted-graphite", 0.006, 0.016)]
    [InlineData("one-foundry-ductile", 0.035, 0.06)]
    public void Window_Purpose_IsThePrintedOne(string purpose, double least, double? most)
    {
        var window = MagnesiumWindow.All.Single(w => w.Purpose == purpose);

        Assert.Equal((least, most), (window.LeastPercent, window.MostPercent));
        Assert.True(purpose == "compacted-graphite" || window.LeastPercent >= MagnesiumFloor.PracticalPercent);
    }

    [Fact]
    public void Inoculants_Kinds_SayTheirUseAndWhatIsAssumed()
    {
        // Bi 0.5 to 1.1 % and Sr about 1 % are read; Ba, Zr and rare earths are remembered. Fading times are assumed.
        Assert.Equal((0.5, 1.1), InoculantGuide.All.Where(i => i.Kind == "Bi").Select(i => (i.LeastPercent, i.MostPercent)).Single());
        Assert.Equal(6, InoculantGuide.All.Select(i => i.Use).Distinct().Count());
        Assert.All(InoculantGuide.All, i => Assert.True(i.LeastPercent <= i.MostPercent));
        Assert.True(InoculantGuide.All.Single(i => i.Kind == "Ba").FadeMinutes > InoculantGuide.All.Single(i => i.Kind == "Sr").FadeMinutes);
    }

    [Fact]
    public void InoculationFadeFit_ExactFade_IsFoundAgain() => Law.Holds(Gen.Select(Gen.Double[3, 12], Gen.Double[0.1, 0.8], Gen.Double[80, 500]), one =>
    {
        var (tau, lasting, start) = one;
        InoculationFade fade = new(tau, lasting);
        var fit = InoculationFadeFit.Of([.. new[] { 0.0, 2, 5, 9, 14, 20 }.Select(t => (t, start * fade.Effect(t)))])!;

        Law.Close(tau, fit.Fade.Minutes, 1e-3);
        Law.Near(lasting, fit.Fade.Lasting, 1e-3);
        Law.Close(start, fit.CountAtStart, 1e-3);
        Law.Near(0, fit.Scatter, 0.01);
        Assert.Equal(6, fit.Samples);
    });

    [Fact]
    public void InoculationFadeFit_ScatteredCounts_KnowTheirScatter()
    {
        // τ 5, 0.4 lasting, 300 at the start, five counts moved by +3, −3, 0, +3, −3.
        var fit = InoculationFadeFit.Of([(0, 303), (3, 215.786), (6, 174.215), (10, 147.360), (15, 125.962)])!;

        Assert.InRange(fit.Fade.Minutes, 3, 7);
        Assert.InRange(fit.Scatter, 1, 5);
        Assert.Equal(4, InoculationFadeFit.Of([(0, 300), (5, 186.2183), (5, 186.2183), (15, 128.9617)])!.Samples); // three times are enough
    }

    [Fact]
    public void InoculationFadeFit_NoFade_IsRefused()
    {
        Assert.Null(InoculationFadeFit.Of([(0, 300), (5, 250), (10, 220)])); // too few
        Assert.Null(InoculationFadeFit.Of([(0, 300), (0, 290), (5, 250), (5, 255)])); // two times only
        Assert.Null(InoculationFadeFit.Of([(0, 200), (4, 220), (8, 235), (16, 240)])); // counts rise, as one published study found
        Assert.Null(InoculationFadeFit.Of([(0, 300), (5, 200), (10, 100), (15, 0)])); // a straight line: no lasting part
    }

    [Fact]
    public void ReLadling_FadedIron_LosesBoth()
    {
        // By hand: 0.050 after 5 minutes at 0.001 a minute is 0.045, less one loss of 0.010.
        var problem = TreatmentCases.Printed();
        var iron = MagnesiumTreatment.Solve(problem)!.Iron;

        Assert.Equal(0.035, iron.MgPercentAt(5, 1, ReLadling.LossPercent.Most), 12);
        Assert.Equal(iron.MgPercentAt(5), iron.MgPercentAt(5, 0, 0.010));
    }

    [Fact]
    [Printed("Elkem, Technical Information 2: over 150 nodules per mm² in 10 mm, inoculated")]
    public void Nodules_MichiganSeriesAtTenMillimetres_LieOnThePrintedSide()
    {
        var series = NoduleSeries.All[0];

        Assert.True(series.Thin * Math.Pow(6.35 / 10, series.Exponent) > 150);
    }

    [Fact]
    public void Losses_Guide_IsAFirstEntryFromMemory()
    {
        Assert.All(LossGuide.All, l => Assert.True(l.LeastK <= l.MostK));
        Assert.Equal((40, 70), LossGuide.All.Where(l => l.Step == "treatment-sandwich").Select(l => (l.LeastK, l.MostK)).Single());
        Assert.Contains("from memory", LossGuide.Source.ToString(), StringComparison.Ordinal);
        // One percent of cover steel at 1300 to 1400 kJ/kg (from memory) cools by 15 to 16 K.
        Assert.InRange(AdditionHeat.DropK(1000, [(10, 1350 / 3.6)]), 15, 16.5);
    }

    [Fact]
    public void Treatment_CustomaryRecipe_MovesFurnaceSiliconUpByOnePercent()
    {
        // 18 kg of 6 % Mg, 45 % Si per tonne and 0.40 % of 75 % ferrosilicon at 90 % (common practice). The exact figure by hand from the contract's balance:
        // 1017.375 kg with 2.27055 % Si and 0.049481 % Mg after treatment, 1021.139 kg with 2.53118 % Si poured: + 1.03118.
        var treated = MagnesiumTreatment.After(TreatmentCases.Printed(), 18, 1_000).AtStart;
        MaterialComposition inoculant = new() { Analysis = Analysis.Of((Element.Si, 75)), RecoveryPercent = new Dictionary<Element, double> { [Element.Si] = 90 } };
        var inoculantKg = Inoculation.InoculantKg(treated.Kg, 0.40);
        var poured = Inoculation.After(treated, inoculant, inoculantKg);

        Law.Near(1017.3751492523, treated.Kg, 1e-9);
        Law.Near(0.0494814266, treated.Percent(Element.Mg), 1e-9);
        Law.Near(1021.1394373045, poured.Kg, 1e-9);
        Law.Near(1.0311834955, poured.Percent(Element.Si) - 1.5, 1e-9);
        // 0.2606346 of it from the inoculant: 2.5311835 − 2.2705489, by hand.
        Law.Near(0.2606346, Inoculation.SiliconPickupPercent(treated, inoculant, inoculantKg), 1e-6);
    }
}

using CsCheck;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Tests.Quantities;

public class FurnaceFormulaTests
{
    // Giesserei-Lexikon, entry Gleichgewichtstemperatur: isotherms between about 1400 and 1440 °C for C 3.5–4.0, Si 1.5–3.0; agreed within 7 °C.
    [Theory]
    [Printed("Giesserei-Lexikon, entry Gleichgewichtstemperatur")]
    [InlineData(4.0, 1.5)]
    [InlineData(3.5, 1.5)]
    [InlineData(4.0, 3.0)]
    [InlineData(3.5, 3.0)]
    public void Crucible_CornersOfTheLexiconsWindow_LieWithinSevenDegrees(double carbon, double silicon) =>
        Assert.InRange(CrucibleReaction.EquilibriumC(carbon, silicon), 1400 - 7.5, 1440 + 7.5);

    // By hand from the remembered law and the lexicon's boiling line.
    [Theory]
    [InlineData(3.2, 2.0, 1425.7, 1483.4)]
    [InlineData(3.3, 1.8, 1418.1, 1477.5)]
    [InlineData(3.4, 2.0, 1420.2, 1479.1)]
    [InlineData(3.5, 2.0, 1417.6, 1477.1)]
    [InlineData(3.6, 2.5, 1425.1, 1483.0)]
    [InlineData(3.75, 1.84, 1407.6, 1469.2)]
    public void Crucible_Table_IsReproduced(double carbon, double silicon, double equilibrium, double boiling)
    {
        Assert.Equal(equilibrium, CrucibleReaction.EquilibriumC(carbon, silicon), 1);
        Assert.Equal(boiling, CrucibleReaction.BoilingC(carbon, silicon), 1);
    }

    [Fact]
    public void Crucible_Trends_AreThoseOfTheLexicon() => Law.Holds(Gen.Select(Gen.Double[2.8, 4.2], Gen.Double[0.8, 3.2]), one =>
    {
        // Giesserei-Lexikon, the same entry: rising silicon raises the temperature, rising carbon lowers it; boiling lies above.
        var (carbon, silicon) = one;
        var here = CrucibleReaction.EquilibriumC(carbon, silicon);

        Assert.True(CrucibleReaction.EquilibriumC(carbon, silicon + 0.01) > here);
        Assert.True(CrucibleReaction.EquilibriumC(carbon + 0.01, silicon) < here);
        Assert.True(CrucibleReaction.BoilingC(carbon, silicon) > here);
    });

    [Theory]
    [InlineData(1400, HoldingDrift.SiliconBurns)]
    [InlineData(1450, HoldingDrift.Still)]
    [InlineData(1500, HoldingDrift.CarbonBoils)]
    public void Drift_ByTemperature_SaysTheDirection(double temperatureC, HoldingDrift expected) =>
        Assert.Equal(expected, CrucibleReaction.Drift(3.5, 2.0, temperatureC));

    [Fact]
    public void Crucible_NoSilicon_HasNoTemperature() => Assert.True(double.IsNaN(CrucibleReaction.EquilibriumC(3.5, 0)));

    [Fact]
    public void SiliconChange_Stoichiometry_IsAsWorkedOut() => Assert.Equal(1.169, CrucibleReaction.SiliconChange(-1), 3);

    // Giesserei-Praxis, Giesserei-Lexikon, entries Sättigungsgrad and Reifegrad: both forms, values by hand.
    [Theory]
    [InlineData(0.75, 400, 392.3)]
    [InlineData(0.80, 360, 353.0)]
    [InlineData(0.85, 320, 313.8)]
    [InlineData(0.90, 280, 274.5)]
    [InlineData(0.95, 240, 235.3)]
    [InlineData(1.00, 200, 196.0)]
    public void NormalStrength_BothForms_AreAsPrinted(double saturation, double rounded, double exact)
    {
        Assert.Equal(rounded, GreyStrength.NormalRoundedMPa(saturation), 9);
        Assert.InRange(GreyStrength.NormalMPa(saturation), exact - 0.051, exact + 0.051);
        Assert.Equal(100, GreyStrength.MaturityPercent(GreyStrength.NormalMPa(saturation), saturation), 9);
    }

    [Fact]
    public void Saturation_BothForms_DifferByAsMuchAsIsSaid()
    {
        // C 3.8, Si 2.1, P 0.05: 1.0724 by the short form (Du, printed 1.07), 1.0569 by the longer one (Giesserei-Lexikon's form, by hand).
        Assert.Equal(1.0724, Saturation.Degree(3.8, 2.1, 0.05), 4);
        Assert.Equal(1.0569, Saturation.LongDegree(3.8, 2.1, 0.05), 4);
        Assert.Equal(278, GreyStrength.NormalRoundedMPa(Saturation.LongDegree(3.30, 1.90, 0.05)), 0);
        Assert.True(double.IsNaN(Saturation.LongDegree(3, 14, 0)));
    }

    [Fact]
    public void WhiteCup_AndHeinesLiquidus_AgreeToAHundredth()
    {
        // Closed loop, by hand: C 3.30, Si 2.00, P 0.05 → CEL 3.825, liquidus 1196.8; the silicon line turned round gives TE 1115.5, the carbon line 3.31.
        var liquidus = Liquidus.TemperatureC(Liquidus.CarbonEquivalent.Value(Analysis.Of((Element.C, 3.30), (Element.Si, 2.00), (Element.P, 0.05))));
        var eutectic = (78.411 - 4.28087 * 0.05 - 2.00) / 0.06831;

        Assert.Equal(1196.8, liquidus, 1);
        Assert.Equal(2.00, WhiteCup.SiliconPercent(eutectic, 0.05), 9);
        Assert.Equal(3.31, WhiteCup.CarbonPercent(eutectic, liquidus), 2);
    }

    [Fact]
    public void Eutectics_SiliconTwo_AreAsWorkedOut()
    {
        // Binary: graphite eutectic 1154, carbide eutectic 1148 °C (Heine's table, ASM column): the remembered lines end within a degree.
        Assert.InRange(EutecticTemperature.GreyC(0), 1153, 1154);
        Assert.InRange(EutecticTemperature.WhiteC(0), 1147, 1148);
        Assert.Equal(43.4, EutecticTemperature.GreyC(2) - EutecticTemperature.WhiteC(2), 9);
    }

    [Fact]
    public void Solubility_SiliconAndSulphur_LowerIt()
    {
        Assert.True(CarbonSolubility.MostPercent(1450, Analysis.Of((Element.Si, 2))) < CarbonSolubility.MostPercent(1450, Analysis.Empty));
        Assert.Equal(0.45, CarbonSolubility.MostPercent(1450, Analysis.Empty) - CarbonSolubility.MostPercent(1450, Analysis.Of((Element.S, 1))), 9);
    }
}

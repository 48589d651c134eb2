using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Treatment;

public class MagnesiumPrintTests
{
    [Fact]
    public void Sensitivity_OfTheGeneralFormula_IsAsWorkedOut()
    {
        // Own case into Cabanne's formula (2011), 1480 °C: 18.68 kg; each change worked out by hand.
        double Kg(double mass = 1000, double s = 0.015, double t = 5, double mg = 6, double r = 50, double temp = 1480) =>
            MagnesiumAddition.AlloyKg(mass, 0.045, s, 0.010, t, mg, r, temp);

        Assert.Equal(18.68, Kg(), 2);
        Assert.Equal(19.19, Kg(temp: 1500), 2);
        Assert.Equal(19.97, Kg(temp: 1530), 2);
        Assert.Equal(20.00, Kg(s: 0.020), 2);
        Assert.Equal(20.42, Kg(t: 10), 2);
        Assert.Equal(20.76, Kg(r: 45), 2);
        Assert.Equal(16.98, Kg(r: 55), 2);
        Assert.Equal(19.67, Kg(mg: 5.7), 2);
        Assert.Equal(19.62, Kg(mass: 1050), 2);
    }

    [Fact]
    public void AlloyKg_RecoveryInPercent_IsNotAHundredfoldTooSmall() =>
        Assert.Equal(17.93, MagnesiumAddition.AlloyKg(1000, 0.045, 0.015, 0.010, 5, 6, recoveryPercent: 50, 1450), 2);

    [Fact]
    public void AlloyKg_SulphurThatWouldRise_HasNoValue() => Assert.True(double.IsNaN(MagnesiumAddition.AlloyKg(1000, 0.045, 0.008, 0.010, 5, 6, 50, 1450)));

    [Fact]
    [Printed("Public teaching notes on ductile iron, author not named")]
    public void AlloyKg_TeachingNotes_GiveThePrintedAddition()
    {
        // Public teaching notes on ductile iron: S 0.015 → 0.008, Mg 0.040, recovery 0.50 → printed 0.0906 % Mg, 1.8 % of a 5 % alloy.
        Assert.Equal(0.0906, MagnesiumAddition.AlloyKg(100, 0.040, 0.015, 0.008, 0, 100, 50, 1450), 4);
        Assert.Equal(1.8, MagnesiumAddition.AlloyKg(100, 0.040, 0.015, 0.008, 0, 5, 50, 1450), 1);
    }

    [Fact]
    public void Yield_OneHeat_HasTwoRecoveries()
    {
        // The same heat by both definitions, by hand: 50.3 % with sulphur credit (the notes' 0.76 gives 50.4), 44.4 % plain.
        Assert.Equal(50.34, MagnesiumYield.WithSulphurCreditPercent(0.040, 0.015, 0.008, 0.090), 2);
        Assert.Equal(44.44, MagnesiumYield.PlainPercent(0.040, 0.090), 2);
        Assert.Equal(50.34, MagnesiumYield.CreditFromPlainPercent(100 * 0.040 / 0.090, 0.015, 0.008, 0.090), 2);
    }

    [Fact]
    [Printed("Elkem, Technical Information 28 and 9")]
    public void Yield_TechnicalInformation28_LiesInTheSandwichRange()
    {
        // Elkem, Technical Information 28: base S 0.018, 1.0 % MgFeSi, final Mg 0.033. Plain ratio 66/60/55/47 % for alloys of 5/5.5/6/7 %;
        // Elkem, Technical Information 9, gives 35 to 70 % for the sandwich.
        Assert.Equal([66, 60, 55, 47], new[] { 5, 5.5, 6, 7 }.Select(mg => Math.Round(MagnesiumYield.PlainPercent(0.033, mg / 100))));
    }

    [Fact]
    public void Fade_ExponentialAndLinear_MeetAtTenMinutesAndPartLater()
    {
        // Residual from 0.0450 with k 0.025 and a 0.001, by hand.
        Fade exponential = new Fade.Exponential(0.025), linear = new Fade.Linear(0.001);

        Assert.Equal(0.0350, exponential.After(0.045, 10), 4);
        Assert.Equal(0.0350, linear.After(0.045, 10), 4);
        Assert.Equal(0.0273, exponential.After(0.045, 20), 4);
        Assert.Equal(0.0250, linear.After(0.045, 20), 4);
        Assert.Equal(0.0213, exponential.After(0.045, 30), 4);
        Assert.Equal(0.0150, linear.After(0.045, 30), 4);
        Assert.Equal(0, linear.After(0.045, 60));
    }

    // Table of Mg(t) from 0.0450 %, by hand.
    [Theory]
    [InlineData(0.010, 0.0441, 0.0407, 0.0368)]
    [InlineData(0.020, 0.0432, 0.0368, 0.0302)]
    [InlineData(0.030, 0.0424, 0.0333, 0.0247)]
    [InlineData(0.040, 0.0415, 0.0302, 0.0202)]
    public void Fade_Table_IsReproduced(double perMinute, double at2, double at10, double at20)
    {
        var fade = new Fade.Exponential(perMinute);

        Assert.Equal([at2, at10, at20], new[] { 2, 10, 20 }.Select(t => Math.Round(fade.After(0.045, t), 4)));
    }

    [Fact]
    [Printed("Elkem, Technical Information 28")]
    public void Fade_TechnicalInformation28_AgreesWithThePrintedRate()
    {
        // Elkem, Technical Information 28: 0.02 % S, 12 to 15 minutes, start near 0.05 %; at Cabanne's 0.001 % a minute 0.035 to 0.038 is left.
        var fade = new Fade.Linear(0.001);

        Assert.InRange(fade.After(0.05, 15), 0.0349, 0.0351);
        Assert.InRange(fade.After(0.05, 12), 0.0379, 0.0381);
    }
}

using CsCheck;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Treatment;

public class LadleTests
{
    // Elkem, Technical Information 9: magnesium of the agent, recovery, most base sulphur.
    [Theory]
    [Printed("Elkem, Technical Information 9")]
    [InlineData("open-ladle", 4, 15, 45, 90, 0.04)]
    [InlineData("sandwich", 3, 10, 35, 70, 0.03)]
    [InlineData("tundish-cover", 3, 10, 50, 80, 0.03)]
    [InlineData("in-mould", 3, 10, 70, 80, 0.01)]
    [InlineData("flow-through", 3, 5, 30, 50, 0.03)]
    [InlineData("plunging", 10, 45, 30, 60, 0.04)]
    [InlineData("plunging-briquette", 15, 100, 30, 50, 0.10)]
    [InlineData("converter", 100, 100, 30, 50, null)]
    [InlineData("cored-wire", 20, 100, 30, 50, null)]
    public void Process_PrintedRanges_AreKept(string key, double mgLeast, double mgMost, double least, double most, double? sulphur)
    {
        var process = MagnesiumProcess.All.Single(p => p.Key == key);

        Assert.Equal(
            (mgLeast, mgMost, least, most, sulphur),
            (process.AgentMgLeast, process.AgentMgMost, process.RecoveryLeast, process.RecoveryMost, process.BaseSulphurMost));
        Assert.Equal((least + most) / 2, process.StartingRecoveryPercent);
    }

    [Fact]
    public void Process_WirePlungingAndConverter_AreDosedOnTheWeighedMass() => Assert.Equal(
        ["plunging", "plunging-briquette", "converter", "cored-wire"],
        MagnesiumProcess.All.Where(p => p.DosedOnWeighedMass).Select(p => p.Key)); // common practice, no source

    [Fact]
    [Printed("Giesserei-Lexikon, Magnesiumabklingen, after Henych and Regitz")]
    public void ReLadling_Once_CostsWhatIsPrinted()
    {
        // Giesserei-Lexikon, Magnesiumabklingen, after Henych and Regitz: 0.007 to 0.010 % Mg each time; 0.045 → 0.035 to 0.038.
        Assert.Equal(0.038, ReLadling.After(0.045, 1, ReLadling.LossPercent.Least), 12);
        Assert.Equal(0.035, ReLadling.After(0.045, 1, ReLadling.LossPercent.Most), 12);
        Assert.Equal(0, ReLadling.After(0.015, 2, 0.010));
    }

    // Giesserei-Lexikon, Magnesiumrestgehalt: 0.025 % as the practical floor, Mg over S at least 3.
    [Theory]
    [InlineData(0.005, null, 0.025)]
    [InlineData(0.010, null, 0.030)]
    [InlineData(0.010, 0.035, 0.035)]
    public void Floor_SulphurAndCustomer_RaiseIt(double sulphur, double? customer, double expected) =>
        Assert.Equal(expected, MagnesiumFloor.Percent(sulphur, customer), 12);

    [Fact]
    public void CoredWire_Example_GivesMetresAndSeconds()
    {
        // By hand: 1262 g of magnesium, 36.1 m of 35 g/m, 66 s at 33 m/min.
        var metres = CoredWire.Metres(1000, 0.045, 0.015, 0.010, 8, 45, 35);

        Assert.Equal(1262, metres * 35, 0);
        Assert.Equal(36.1, metres, 1);
        Assert.Equal(66, CoredWire.FeedSeconds(metres, 33), 0);
    }

    [Theory]
    [Printed("Supplier's page on cored wire")]
    [InlineData(0.9, 25, 2.16)]
    [InlineData(1.2, 42, 1.71)]
    public void CoredWire_SupplierDepths_ImplyTheLifeOfTheSheath(double metres, double speed, double expected) =>
        Assert.Equal(expected, CoredWire.FeedSeconds(metres, speed), 2); // supplier's page on cored wire: 0.9 m at 25 m/min, 1.2 m at 42 m/min

    [Theory]
    [InlineData(20, 5.23)]
    [InlineData(30, 4.73)]
    public void TundishHole_Heads_GiveTheHole(double headCm, double expected) => Assert.Equal(expected, TundishHole.DiameterCm(1000, 40, headCm), 2);

    [Fact]
    public void TundishHole_OrificeTheory_IsTheFormulaAtFullDischarge()
    {
        // Orifice flow at 6.9 g/cm³ and 981 cm/s²: 4.83 cm; the printed 0.07 is a discharge factor of 0.85.
        var theory = Math.Sqrt(4 / Math.PI * (1_000_000 / 6.9) / (40 * Math.Sqrt(2 * 981 * 20)));

        Assert.Equal(4.83, theory, 2);
        Assert.Equal(0.85, theory * theory / Math.Pow(TundishHole.DiameterCm(1000, 40, 20), 2), 2);
    }

    [Fact]
    public void FadeFit_ExactFade_IsFoundAgain() => Law.Holds(Gen.Select(Gen.Double[0.005, 0.05], Gen.Double[0.02, 0.08], Gen.Double[0.5, 3].Array[3, 8]), one =>
    {
        var (k, start, steps) = one;
        var minutes = 0.0;
        var fit = FadeFit.Of([.. steps.Select(step => (minutes += step, start * Math.Exp(-k * minutes)))])!;

        Law.Close(k, fit.Fade.PerMinute, 1e-7);
        Law.Near(0, fit.StandardError!.Value, 1e-7);
    });

    [Fact]
    public void FadeFit_Useless_IsRefused()
    {
        Assert.Null(FadeFit.Of([(1, 0.045)]));
        Assert.Null(FadeFit.Of([(1, 0.045), (1, 0.040)]));
        Assert.Null(FadeFit.Of([(1, 0.040), (5, 0.045)]));
        Assert.Null(FadeFit.Of([(1, 0.040), (5, 0)]));
        Assert.Null(FadeFit.Of([(1, 0.045), (5, 0.040)])!.StandardError);
    }

    [Fact]
    public void FadeFit_ScatteredSamples_KnowTheirError()
    {
        // By hand: ln 0.045, 0.041, 0.038, 0.034 at 0, 4, 8, 12 min.
        var fit = FadeFit.Of([(0, 0.045), (4, 0.041), (8, 0.038), (12, 0.034)])!;

        Assert.Equal(0.022922, fit.Fade.PerMinute, 5);
        Law.Near(0.00117052, fit.StandardError!.Value, 1e-8);
    }

    [Fact]
    public void Band_ShortWeightAndHighRecovery_LieAboveThePlan()
    {
        var problem = TreatmentCases.Printed();
        var band = TreatmentBand.Of(problem, 18.178307, 5, (45, 55), (1430, 1470));

        Assert.InRange(band.LeastMgPercent, 0.033, 0.040);
        Assert.InRange(band.MostMgPercent, 0.055, 0.066);
        var point = TreatmentBand.Of(problem, 18.178307, 0, (50, 50), (1450, 1450));
        Assert.Equal((0.045, 0.050), (Math.Round(point.LeastMgPercent, 6), Math.Round(point.MostMgPercent, 6)));
    }

    [Fact]
    public void Band_AnyLadle_HoldsThePlan() => Law.Holds(TreatmentCases.Any, problem =>
    {
        if (MagnesiumTreatment.Solve(problem) is not { } answer) return;
        var recovery = problem.Recipe.MgRecoveryPercent;
        var band = TreatmentBand.Of(problem, answer.AlloyKg, 5, (recovery * 0.9, recovery * 1.1), (problem.TemperatureC - 20, problem.TemperatureC + 20));

        Assert.True(band.LeastMgPercent <= problem.TargetMgPercent && band.MostMgPercent >= answer.MgAfterTreatmentPercent);
    });

    [Fact]
    public void Inoculation_Effect_FallsToItsLastingPart() => Law.Holds(Gen.Select(Gen.Double[1, 20], Gen.Double[0, 1], Gen.Double[0, 60]), one =>
    {
        var (tau, lasting, minutes) = one;
        InoculationFade fade = new(tau, lasting);

        Law.Near(1, fade.Effect(0));
        Assert.True(fade.Effect(minutes + 1) <= fade.Effect(minutes) + 1e-15 && fade.Effect(minutes) >= lasting - 1e-15);
    });

    [Fact]
    [Printed("Elkem, Technical Information 4")]
    public void Inoculation_PublishedRates_AreKept()
    {
        // Elkem, Technical Information 4: 0.2 % for most grey irons, up to 0.75 % for the most critical ductile irons.
        Assert.Equal(0.2, InoculationRate.All.Single(r => r.Place == "ladle-grey").MostPercent);
        Assert.Equal(0.75, InoculationRate.All.Single(r => r.Place == "ladle-ductile").MostPercent);
    }

    // University of Michigan, ORA 07408, Progress Report 1, 1965: 211 and 49 thousand per square inch are 327 and 76 per mm²; exponents by hand.
    [Theory]
    [InlineData("MgFeSi", "FeSi75", 0.588)]
    [InlineData("CeMgFeSi", "FeSi75", 0.820)]
    [InlineData("NiMg", "FeSi75", 0.549)]
    [InlineData("MgFeSi", "SrFeSi", 1.13)]
    [InlineData("CeMgFeSi", "SrFeSi", 0.634)]
    [InlineData("NiMg", "SrFeSi", 0.399)]
    public void Nodules_Series_FallWithSection(string magnesium, string inoculant, double exponent) =>
        Law.Near(exponent, NoduleSeries.All.Single(s => (s.Magnesium, s.Inoculant) == (magnesium, inoculant)).Exponent, 0.012);

    [Theory]
    [Printed("University of Michigan, ORA 07408, Progress Report 1, 1965")]
    [InlineData(211, 327)]
    [InlineData(49, 76)]
    public void Nodules_ThousandsPerSquareInch_AreThePrintedCounts(double thousands, double expected) =>
        Assert.Equal(expected, Math.Round(NoduleSeries.FromThousandsPerSquareInch(thousands)));

    [Fact]
    [Printed("P.-M. Cabanne, 2011; Giesserei-Praxis, Magnesiumbehandlung")]
    public void Sulphide_PrintedRatios_AreTheAtomicMasses()
    {
        // P.-M. Cabanne, 2011, prints 0.76 kg Mg per kg S; Giesserei-Praxis, Magnesiumbehandlung, 0.75.
        Assert.Equal(0.76, MagnesiumSulphide.MagnesiumPerSulphur, 2);
        Assert.InRange(MagnesiumSulphide.MagnesiumPerSulphur, 0.75, 0.76);
    }

    // Giesserei-Praxis, Giesserei-Lexikon, Magnesiumbehandlung: addition % = 2.5 (0.75 S + Mg), all sulphur bound, recovery 40 %.
    [Theory]
    [InlineData(0.010, 0.040, 0.1188)]
    [InlineData(0.015, 0.045, 0.1406)]
    [InlineData(0.020, 0.050, 0.1625)]
    [InlineData(0.010, 0.060, 0.1688)]
    public void Addition_LexiconForm_IsTheGeneralFormulaWithoutFadeToOnePercent(double sulphur, double mg, double lexicon)
    {
        Assert.Equal(lexicon, 2.5 * (0.75 * sulphur + mg), 4);
        Assert.InRange(MagnesiumAddition.AlloyKg(100, mg, sulphur, 0, 0, 100, 40, 1450) / lexicon, 0.999, 1.01);
    }
}

using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;

namespace MeltShop.Operations.Tests.Laboratory;

/// <summary>In, out or too close to tell, with the metallurgist's guard band and without one.</summary>
public sealed class QuantityJudgementTests
{
    // C 3.50 to 3.70; two repeatabilities of 0.02 over four burns are 0.02.
    [Theory]
    [InlineData(3.60, QuantityStanding.In, 5)]
    [InlineData(3.521, QuantityStanding.In, 1.05)]
    [InlineData(3.519, QuantityStanding.TooClose, 0.95)]
    [InlineData(3.49, QuantityStanding.TooClose, -0.5)]
    [InlineData(3.479, QuantityStanding.Low, -1.05)]
    [InlineData(3.73, QuantityStanding.High, -1.5)]
    public void Carbon_WithAGuardBandOfTwoRepeatabilities_StandsAsItsDistanceSays(double carbon, QuantityStanding standing, double distance)
    {
        var judged = Assert.Single(QuantityJudgement.Of(Sample([.. Enumerable.Repeat(carbon, 4)], Spark(0.02, 2)), Grade("C", 3.50, 3.70)));

        Assert.Equal((standing, true), (judged.Standing, judged.IsSet));
        Assert.Equal(0.02, judged.Width!.Value, 12);
        Assert.Equal(distance, judged.Distance!.Value, 9);
        Assert.Equal(0.02, judged.Repeatability!.Value, 12);
    }

    [Fact]
    public void Mean_ThatTheInstrumentSent_HasNoScatterOfItsOwn()
    {
        var judged = Assert.Single(QuantityJudgement.Of(Sample([3.51], null) with { IsMeanOnly = true }, Grade("C", 3.50, 3.70)));

        Assert.Equal((null, null, QuantityStanding.In), (judged.Width, judged.Distance, judged.Standing));
    }

    // Half of the 95 % interval of 3.58, 3.60, 3.62: t(0.025, 2) = 4.303 (G. W. Snedecor, W. G. Cochran, Statistical Methods, 8th ed. 1989, table of t), times 0.02/√3.
    [Fact]
    public void Burns_WithoutAGuardBand_SayTheirOwnInterval()
    {
        var judged = Assert.Single(QuantityJudgement.Of(Sample([3.58, 3.60, 3.62], Spark(0.02, null)), Grade("C", 3.50, 3.70)));

        Assert.Equal(4.303 * 0.02 / Math.Sqrt(3), judged.Width!.Value, 4);
        Assert.Equal((false, QuantityStanding.In), (judged.IsSet, judged.Standing));
        Assert.Equal(5, judged.Distance!.Value, 9);
    }

    [Fact]
    public void CarbonEquivalent_OfScattersThatAreIndependent_AddsTheirSquares()
    {
        var sample = Sample([3.60], null) with
        {
            Means = [new(Element.C, 3.60, 1), new(Element.Si, 1.5, 1), new(Element.P, 0.03, 1)],
            Instrument = new(1, Guid.Empty, "s", "s", InstrumentKind.Spark, false, null, true, [new(Element.C, 0.02, 2), new(Element.Si, 0.03, 2), new(Element.P, 0.003, 2)]),
        };
        var judged = Assert.Single(QuantityJudgement.Of(sample, Grade("CE", 4.0, 4.4)));

        Assert.Equal(2 * Math.Sqrt(0.02 * 0.02 + 0.01 * 0.01 + 0.001 * 0.001), judged.Width!.Value, 12);
        Assert.Equal(Math.Sqrt(0.02 * 0.02 + 0.01 * 0.01 + 0.001 * 0.001), judged.Repeatability!.Value, 12);
    }

    /// <summary>Scatters of 0.01 Mn and 0.002 S give 0.01 and 1.7 · 0.002 of the balance: 0.010562 together; 0.42 lies 0.08 under a most of 0.50.</summary>
    [Fact]
    public void ManganeseBalance_CarriesTheScatterOfBothElements()
    {
        var judged = Assert.Single(QuantityJudgement.Of(Coin((Element.Mn, 0.556), (Element.S, 0.08)), Grade("manganeseBalance", 0.30, 0.50)));

        Assert.Equal(0.42, judged.Value!.Value, 9);
        Assert.Equal(2 * 0.010562, judged.Width!.Value, 5);
        Assert.Equal(0.08 / 0.010562, judged.Distance!.Value, 2);
        Assert.Equal(QuantityStanding.In, judged.Standing);
    }

    [Fact]
    public void Quantity_ThatLacksAnElement_NamesItAndIsNotJudged()
    {
        var lacking = Assert.Single(QuantityJudgement.Of(Coin((Element.Mn, 0.556)), Grade("manganeseBalance", 0.30, 0.50)));
        var carbon = Assert.Single(QuantityJudgement.Of(Coin((Element.C, 3.4), (Element.Si, 2.0), (Element.P, 0.05)) with { GreyFracture = true }, Grade("Sc", 0.8, 1.1)));
        var treated = Assert.Single(QuantityJudgement.Of(Coin((Element.Mn, 0.5), (Element.S, 0.01), (Element.Mg, 0.04)), Grade("manganeseBalance", 0.30, 0.50)));

        Assert.Equal((QuantityStanding.NotMeasured, Element.S), (lacking.Standing, lacking.Missing.Single()));
        Assert.Equal(QuantityStanding.NotJudged, carbon.Standing);
        Assert.Equal((QuantityStanding.NotJudged, null), (treated.Standing, treated.Value));
    }

    /// <summary>Ferrite of 961·exp(−2.734) = 62.4 % moves by −62.4 · 7.75 for a point of copper: 4.84 % for a scatter of 0.01.</summary>
    [Fact]
    public void Ferrite_OfAScatterOfCopper_CarriesItByItsSlope()
    {
        var coin = Coin((Element.Mn, 0.3), (Element.Si, 2.5), (Element.Cu, 0.3), (Element.Sn, 0.005), (Element.Cr, 0.04)) with
        {
            Instrument = new(1, Guid.Empty, "s", "s", InstrumentKind.Spark, false, null, true,
            [
                new(Element.Mn, 0, 2), new(Element.Si, 0, 2), new(Element.Cu, 0.01, 2), new(Element.Sn, 0, 2), new(Element.Cr, 0, 2),
            ]),
        };
        var judged = Assert.Single(QuantityJudgement.Of(coin, Grade("ferritePercent", 60, 100)));

        Assert.Equal(62.4, judged.Value!.Value, 1);
        Assert.Equal(2 * 4.84, judged.Width!.Value, 1);
        Assert.Equal(QuantityStanding.TooClose, judged.Standing);
        Assert.Equal([Element.As, Element.Sb, Element.Pb, Element.Bi], judged.TakenAsZero);
    }

    [Fact]
    public void Carbon_OfATreatedOrGreyCoin_IsNotJudgedAndOfCombustionIs()
    {
        var coin = Sample([3.2, 3.2, 3.2], Spark(0.02, 2));
        var combustion = coin.Instrument! with { Kind = InstrumentKind.Combustion };

        Assert.Equal(QuantityStanding.NotJudged, Standing(coin with { GreyFracture = true }));
        Assert.Equal(QuantityStanding.NotJudged, Standing(coin with { Kind = SampleKind.LastMetal }));
        Assert.Equal(QuantityStanding.Low, Standing(coin with { GreyFracture = true, Instrument = combustion }));
        Assert.Equal(QuantityStanding.NotMeasured, Standing(coin with { Means = [] }));

        static QuantityStanding Standing(SampleView sample) => QuantityJudgement.Of(sample, Grade("C", 3.50, 3.70)).Single(q => q.Window.Stage == QuantityJudgement.StageOf(sample.Kind)).Standing;
    }

    /// <summary>C + Si/4 are 4.30, 4.33 and 4.36: the liquidus of the mean lies under 1150 °C, and of the last burn the formula, which ends at 4.34, says nothing.</summary>
    [Fact]
    public void Liquidus_WhereABurnLiesBeyondItsFormula_IsJudgedByTheMeanAlone()
    {
        var coin = Sample([3.90, 3.93, 3.96], null) with
        {
            Burns = [.. new[] { 3.90, 3.93, 3.96 }.Select((c, i) => new BurnView(i + 1, false, null, [new(Element.C, c, false, ""), new(Element.Si, 1.6, false, ""), new(Element.P, 0, false, "")]))],
            Means = [new(Element.C, 3.93, 3), new(Element.Si, 1.6, 3), new(Element.P, 0, 3)],
        };
        var judged = Assert.Single(QuantityJudgement.Of(coin, [new WindowView(WindowStage.Furnace, "liquidusC", 1150, null, 1170, 0)]));

        Assert.InRange(judged.Value!.Value, 1145, 1149.9);
        Assert.Equal((null, QuantityStanding.Low), (judged.Width, judged.Standing));
    }

    /// <summary>
    /// C 3.67095, Si 1.9: the long degree of saturation, 3.67095 / 3.671, is nearer to 1.0, where the strength formula ends, than the slopes reach: on its
    /// far side there is none, and the guard band that they would carry is not known.
    /// </summary>
    [Fact]
    public void Strength_AHairBeforeTheEndOfItsFormula_HasNoBandThatIsNoNumber()
    {
        var strength = new WindowView(WindowStage.Poured, "normalStrengthMPa", 200, null, 400, 0);
        var judged = Assert.Single(QuantityJudgement.Of(Coin((Element.C, 3.67095), (Element.Si, 1.9), (Element.P, 0)), [strength]));
        var inside = Assert.Single(QuantityJudgement.Of(Coin((Element.C, 3.6), (Element.Si, 1.9), (Element.P, 0)), [strength]));

        Assert.Equal((null, null, QuantityStanding.Low), (judged.Width, judged.Distance, judged.Standing));
        Assert.True(inside.Width > 0);
    }

    /// <summary>A reading of less than 0.05 % may be anything from 0 up to it.</summary>
    [Theory]
    [InlineData(null, 0.04, QuantityStanding.TooClose)]
    [InlineData(null, 0.06, QuantityStanding.In)]
    [InlineData(0.03, null, QuantityStanding.TooClose)]
    [InlineData(0.08, null, QuantityStanding.Low)]
    public void Reading_BelowDetection_IsJudgedByAllThatItMayBe(double? least, double? most, QuantityStanding standing)
    {
        var coin = Sample([0.05], null) with { Burns = [new(1, false, null, [new(Element.C, 0.05, true, "<0.05")])] };

        Assert.Equal(standing, Assert.Single(QuantityJudgement.Of(coin, [new WindowView(WindowStage.Furnace, "C", least, null, most, 0)])).Standing);
    }

    /// <summary>A mean of one burn, by an instrument that scatters by 0.01, of sulphur by 0.002.</summary>
    private static SampleView Coin(params (Element Element, double Percent)[] percents) => Sample([3.5], null) with
    {
        Burns = [new(1, false, null, [.. percents.Select(p => new ReadingView(p.Element, p.Percent, false, ""))])],
        Means = [.. percents.Select(p => new MeanView(p.Element, p.Percent, 1))],
        Instrument = new(1, Guid.Empty, "s", "s", InstrumentKind.Spark, false, null, true, [.. percents.Select(p => new InstrumentElementView(p.Element, p.Element == Element.S ? 0.002 : 0.01, 2))]),
    };

    private static InstrumentView Spark(double repeatability, double? factor) =>
        new(1, Guid.Empty, "s", "Spark", InstrumentKind.Spark, false, null, true, [new(Element.C, repeatability, factor)]);

    private static SampleView Sample(double[] carbon, InstrumentView? instrument) => new(
        new Origin(1, "Ida", DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch, null, null, false), 1, null, SampleKind.Bath, null, null,
        [.. carbon.Select((c, i) => new BurnView(i + 1, false, null, [new(Element.C, c, false, "")]))],
        [new(Element.C, carbon.Average(), carbon.Length)]) { Instrument = instrument };

    private static GradeView Grade(string quantity, double least, double most) => new(
        1, Guid.Empty, "G", IronFamily.Ductile, "invented for a test", true, null,
        [new(WindowStage.Furnace, quantity, least, null, most, 0), new(WindowStage.Poured, quantity, least, null, most, 0)]);
}

using Bunit;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Heats;
using Element = MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Web.Tests.Pages.Heats;

public sealed class SampleCardTests : HeatTest
{
    [Fact]
    public async Task Sample_Inside_SaysSoAndNamesWhatWasNotMeasured()
    {
        await GoodSample();
        var page = Open();

        Assert.Equal("in", page.Find("[data-testid=sample] [data-quantity=C]").GetAttribute("data-verdict"));
        Assert.Equal("unknown", page.Find("[data-testid=sample] [data-quantity=Cu]").GetAttribute("data-verdict"));
        Assert.Contains("not measured: Cu", page.Find("[data-testid=sample-verdict]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sample_BelowDetection_StaysBelowItInWhatHappened()
    {
        await The<RecordSample>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[new("C", 3.64, false, "3.64"), new("Ti", 0.002, true, "<0.002")]]), Cancellation);

        Assert.Contains("(C\u00a03.64, Ti\u00a0<0.002\u00a0%)", Open().Find("[data-testid=timeline] [data-kind=Sample]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Fact_OfAnotherDayThanTheStart_SaysItsDay()
    {
        await GoodSample();
        var heat = await Heat();
        SignIn(Role.Melter);
        Assert.Empty(Render<HeatTimeline>(parameters => parameters.Add(p => p.Heat, heat)).FindAll(".timeline-time .quiet"));

        var before = heat with { Heat = heat.Heat with { StartedAt = heat.Heat.StartedAt.AddDays(-1) } };
        Assert.NotEmpty(Render<HeatTimeline>(parameters => parameters.Add(p => p.Heat, before)).FindAll("[data-kind=Sample] .timeline-time .quiet"));
    }

    [Fact]
    public async Task Sample_Outside_NamesTheElement()
    {
        await Sample([3.64, 1.10, 0.30], [3.65, 1.11, 0.30], [3.66, 1.10, 0.31]);

        Assert.Contains("outside: Si", Open().Find("[data-testid=sample-verdict]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sample_NearerToTheLimitThanItIsCertain_IsTooCloseToTell()
    {
        await Sample([3.64, 1.29, 0.30], [3.65, 1.34, 0.30], [3.66, 1.31, 0.31]);

        Assert.Equal("close", Open().Find("[data-testid=sample] [data-quantity=Si]").GetAttribute("data-verdict"));
    }

    [Fact]
    public async Task Burns_Three_AreTooFewForATestAndThatIsSaid()
    {
        await Sample([3.64, 1.50, 0.30], [3.65, 1.51, 0.30], [3.95, 1.50, 0.30]);
        var page = Open();

        Assert.Contains("All elements: burns that count: 3. Below 4 of them, and without a repeatability", page.Find("[data-testid=suspect-rule]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("suspect:", page.Find("[data-testid=burn-table]").TextContent, StringComparison.Ordinal);
        Assert.Equal(["3.64", "1.50", "0.30"], page.FindAll("[data-burn='1'] td.number").Take(3).Select(cell => cell.TextContent)); // with the decimals of the means below
    }

    /// <summary>f = 3.314 for three burns (ISO 5725-6:1994): 3.314 × 0.03 = 0.099 %. The range of C is 0.10, that of Si 0.09; nobody found the repeatability of P.</summary>
    [Fact]
    public async Task Burns_ThreeOfAnInstrumentWhoseRepeatabilityIsKnown_AreHeldAgainstIt()
    {
        var spark = await Instrument(new("C", 0.03, null), new("Si", 0.03, null), new("P", null, null));
        await Burns(spark, [("C", 3.64), ("Si", 1.50), ("P", 0.02)], [("C", 3.65), ("Si", 1.51), ("P", 0.02)], [("C", 3.74), ("Si", 1.59), ("P", 0.05)]);
        var page = Open();

        Assert.Contains("suspect: C (range, 5\u00a0%)", page.Find("[data-burn=\"3\"]").TextContent, StringComparison.Ordinal);
        var rules = page.FindAll("[data-testid=suspect-rule] p").Select(p => p.TextContent).ToList();
        Assert.StartsWith("C, Si: where the range is wider", rules[0], StringComparison.Ordinal);
        Assert.StartsWith("P: burns that count: 3. Below 4 of them", rules[1], StringComparison.Ordinal);
    }

    /// <summary>3.60, 3.64 and 3.68: mean 3.64, s = √((0.04² + 0 + 0.04²) / 2) = 0.04.</summary>
    [Fact]
    public async Task Burns_Several_ShowMeanRangeAndStandardDeviation()
    {
        await Burns(null, [("C", 3.60), ("Si", 1.50)], [("C", 3.64)], [("C", 3.68)]);
        var page = Open();

        Assert.Equal(["0.040", "–"], page.FindAll("[data-testid=deviation] td.number").Select(cell => cell.TextContent));
        Assert.Contains(page.FindAll("[data-testid=suspect-rule] p"), p => p.TextContent.StartsWith("Si: a single burn", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Burn_Suspect_IsMarkedByItsRuleAndSetAsideWithAReason()
    {
        await Sample([3.64, 1.50, 0.30], [3.65, 1.51, 0.30], [3.66, 1.50, 0.30], [3.64, 1.50, 0.30], [3.95, 1.50, 0.30]);
        var page = Open(Role.Metallurgist);
        Assert.Contains("suspect: C (Grubbs, 1\u00a0%)", page.Find("[data-burn=\"5\"]").TextContent, StringComparison.Ordinal);

        page.Find("[data-burn=\"5\"] button").Click();
        page.WaitForElement("[data-testid=aside-form]", Patience);
        await page.Find("[data-testid=aside-form]").SubmitAsync();
        Assert.Equal("text.missing", Error(page, "aside-form", "reason"));
        Type(page, "aside-form", "reason", "crater at the edge");
        await page.Find("[data-testid=aside-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Contains("set aside: crater at the edge", page.Find("[data-burn=\"5\"]").TextContent, StringComparison.Ordinal), Patience);

        var sample = Assert.Single((await Heat()).Samples);
        Assert.Equal(3.6475, sample.Mean(Element.C)!.Value, 1e-9);
        Assert.Equal(5, sample.Burns.Count);
    }

    [Fact]
    public async Task Sample_WithAGuardBand_ShowsItAndTheDistanceInRepeatabilities()
    {
        var spark = await Instrument(new InstrumentElementInput("Si", 0.02, 2));
        await Coin(spark, false, ("Si", 1.29));
        var page = Open();

        Assert.Equal("close", page.Find("[data-testid=sample] [data-quantity=Si]").GetAttribute("data-verdict"));
        Assert.Contains("0.5 × repeatability beyond the limit", page.Find("[data-quantity=Si] [data-testid=distance]").TextContent, StringComparison.Ordinal);
        Assert.Contains("± 0.04", page.Find("[data-quantity=Si] [data-testid=doubt]").TextContent, StringComparison.Ordinal);
        Assert.Equal("repeatability 0.02\u00a0%", page.Find("[data-quantity=Si] [data-testid=repeatability]").TextContent);
        Assert.Empty(page.FindAll("[data-quantity=C] [data-testid=repeatability]")); // nobody found that of carbon
        Assert.Contains("guard band that the metallurgist set", page.Find("[data-testid=scatter]").TextContent, StringComparison.Ordinal);
        Assert.StartsWith("Spark, hall 1", page.Find("[data-testid=sample-source]").TextContent.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Carbon_OfAGreyCoin_IsNotJudgedAndThePageSaysWhereItComesFrom()
    {
        await GoodSample();
        await Coin(null, true, ("C", 3.2), ("Si", 1.5), ("P", 0.02));
        var page = Open();

        Assert.Equal("unjudged", page.Find("[data-testid=sample] [data-quantity=C]").GetAttribute("data-verdict"));
        Assert.Contains("not judged: C", page.Find("[data-testid=sample-verdict]").TextContent, StringComparison.Ordinal);
        Assert.Contains("3.65\u00a0%", page.Find("[data-testid=carbon-note] [data-source=FurnaceSample]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cup_ShowsItsArrestsAndWhatFollows()
    {
        await The<RecordSample>().Run(Founder, new(
            Guid.NewGuid(), Now, HeatId, null, SampleKind.Cup, [],
            Figures: [new(FigureQuantity.LiquidusC, 1200, "1200"), new(FigureQuantity.EutecticLowC, 1138, "1138"), new(FigureQuantity.EutecticHighC, 1145.5, "1145,5")]), Cancellation);
        var page = Open();

        Assert.Contains("1145,5\u00a0°C", page.Find("[data-figure=EutecticHighC]").TextContent, StringComparison.Ordinal);
        Assert.Contains("3.79\u00a0%", page.Find("[data-testid=cup-cel]").TextContent, StringComparison.Ordinal); // 1200 °C in Heine's table, see the liquidus
        Assert.Contains("7.5\u00a0K", page.Find("[data-testid=sample-figures]").TextContent, StringComparison.Ordinal);
    }

    private async Task<long> Instrument(params InstrumentElementInput[] elements) => (await The<AddInstrument>().Run(Founder, new(
        Guid.NewGuid(), Now, "spark-1", "Spark, hall 1", InstrumentKind.Spark, false, elements, "invented for a test"), Cancellation)).Value;

    private Task<Operations.Outcome<long>> Burns(long? instrument, params (string Element, double Percent)[][] burns) => The<RecordSample>().Run(Founder, new(
        Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath,
        [.. burns.Select(burn => (IReadOnlyList<ReadingInput>)[.. burn.Select(p => new ReadingInput(p.Element, p.Percent, false, FormattableString.Invariant($"{p.Percent}")))])],
        InstrumentId: instrument), Cancellation);

    private Task<Operations.Outcome<long>> Coin(long? instrument, bool isGrey, params (string Element, double Percent)[] percents) => The<RecordSample>().Run(Founder, new(
        Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath,
        [[.. percents.Select(p => new ReadingInput(p.Element, p.Percent, false, FormattableString.Invariant($"{p.Percent}")))]], InstrumentId: instrument, GreyFracture: isGrey), Cancellation);

    [Fact]
    public async Task Burn_ReadByAMelter_CannotBeSetAside()
    {
        await GoodSample();

        Assert.DoesNotContain(Open().FindAll("button"), button => button.TextContent == "Set aside");
    }
}

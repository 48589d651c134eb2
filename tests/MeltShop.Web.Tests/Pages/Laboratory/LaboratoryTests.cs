using Bunit;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Operations.Drafts;
using MeltShop.Operations.Laboratory;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Drafts;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Pages.Heats;
using MeltShop.Web.Pages.History;
using MeltShop.Web.Pages.Correction;
using MeltShop.Web.Pages.Laboratory;
using MeltShop.Web.Tests.Pages.Heats;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Element = MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Web.Tests.Pages.Laboratory;

/// <summary>Instruments, their checks, trends and the recall list, over a real database.</summary>
public sealed class LaboratoryTests : HeatTest
{
    [Fact]
    public async Task Instrument_AddedByTheMetallurgist_IsRefusedAtItsFieldsAndThenShownAsNeverChecked()
    {
        SignIn(Role.Metallurgist);
        var page = Render<LaboratoryDesk>();
        page.WaitForElement("[data-testid=add-instrument]", Patience);
        await page.InvokeAsync(() => page.Find("[data-testid=add-instrument]").Click());
        Type(page, "instrument-form", "[data-field=name] input", "Spark, hall 1");
        Type(page, "instrument-form", "[data-field$=element] input", "Xx");
        await page.InvokeAsync(() => page.Find("[data-testid=instrument-form]").Submit());
        page.WaitForElement("[data-field$=element] .field-error[data-code=\"element.unknown\"]", Patience);
        Type(page, "instrument-form", "[data-field$=element] input", "C");
        Type(page, "instrument-form", "[data-field$=first] input", "0,02");
        Type(page, "instrument-form", "[data-field$=second] input", "2");
        Type(page, "instrument-form", "[data-field=code] input", "spark-1");
        Type(page, "instrument-form", "[data-field=figuresSource] input", "invented for a test");
        await page.InvokeAsync(() => page.Find("[data-testid=instrument-form]").Submit());

        page.WaitForElement("[data-instrument=\"spark-1\"] [data-check=none]", Patience);
        var instrument = Assert.Single(await The<InstrumentsPage>().Load(Cancellation));
        Assert.Equal((0.02, 2), (instrument.Elements[0].Repeatability!.Value, instrument.Elements[0].GuardFactor!.Value));
    }

    [Fact]
    public void Laboratory_ForAMelter_SaysWhoMay()
    {
        SignIn(Role.Melter);
        var page = Render<LaboratoryDesk>();
        page.WaitForElement(".read-only", Patience);

        Assert.Empty(page.FindAll("[data-testid=add-instrument], [data-testid=add-reference]"));
    }

    [Fact]
    public async Task Laboratory_WithMoreThanItLists_SaysSoOfEachList()
    {
        await using (var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation))
        {
            db.AddRange(Enumerable.Range(0, 501).Select(number => new Instrument { Code = $"i-{number}", Name = $"Spark {number}", Kind = InstrumentKind.Spark, Version = Guid.NewGuid() }));
            db.AddRange(Enumerable.Range(0, 500).Select(number => new ReferenceMaterial { Code = $"r-{number}", Name = $"Iron {number}", Certificate = "invented for a test", Version = Guid.NewGuid() }));
            await db.SaveChangesAsync(Cancellation);
        }

        SignIn(Role.Melter);
        var page = Render<LaboratoryDesk>();
        page.WaitForElement("[data-instrument]", Patience);

        Assert.Equal("There are more than 500; only the first 500 are shown.", Assert.Single(page.FindAll("[data-testid=more]")).TextContent); // of instruments; all references are there
        Assert.Equal((500, 500), (page.FindAll("[data-instrument]").Count, page.FindAll("[data-reference]").Count));
    }

    [Fact]
    public async Task ControlSample_OutsideItsLimits_IsSaidOnTheInstrumentAndOnEveryLaterSample()
    {
        var (instrument, reference) = await Set();
        await Check(instrument, reference, 3.30);
        await Coin(instrument);
        SignIn(Role.Melter);
        var page = Render<InstrumentDetail>(parameters => parameters.Add(p => p.Id, instrument));
        Assert.EndsWith("inside, just now", page.WaitForElement("[data-check=good]", Patience).TextContent, StringComparison.Ordinal);
        await page.InvokeAsync(() => page.Find("[data-testid=check-instrument]").Click());
        HasKeyboard(page);
        Type(page, "control-form", "[data-cell='0.C']", "3,45");
        await page.InvokeAsync(() => page.Find("[data-testid=control-form]").Submit());

        page.WaitForElement("[data-check=outside]", Patience);
        page.WaitForAssertion(() => Assert.NotNull(page.Find("[data-testid=doubted] [data-heat]")), Patience);
        var good = (await The<InstrumentPage>().Load(instrument, Cancellation))!.State.Verdicts[0].At;
        Assert.Equal($"/recall?from=Instrument&of=spark-1&since={HistoryAddress.Write(good)}", page.Find("[data-testid=to-recall]").GetAttribute("href"));
        Assert.Equal(good, HistoryAddress.ReadInstant(HistoryAddress.Write(good)));
        Assert.Contains("one beyond 3 s", page.Find("[data-testid=last-point]").TextContent, StringComparison.Ordinal);
        await Coin(instrument);
        var heat = Open();
        Assert.Contains("last control sample outside its action limits, 0\u00a0min before", heat.Find("[data-testid=sample] [data-check=outside]").TextContent, StringComparison.Ordinal);
        Assert.NotNull(heat.FindAll("[data-testid=sample]")[1].QuerySelector("[data-check=good]")); // the coin of before
        await WeighIn("steel", 1500);
        Assert.NotNull(Render<CorrectionPlanning>(parameters => parameters.Add(p => p.HeatId, HeatId)).WaitForElement("[data-testid=bath-check] [data-check=outside]", Patience));
    }

    [Fact]
    public async Task ControlSample_TypedAndNotHandedIn_LiesAtTheInstrumentForAllUntilItIs()
    {
        var (instrument, _) = await Set();
        var subject = DraftSubject.ControlSample(instrument);
        await The<KeepDraft>().Run(Founder, new(subject, "burns[0].C", "3.31", null), Cancellation);
        SignIn(Role.Inspector);
        var page = Render<InstrumentDetail>(parameters => parameters.Add(p => p.Id, instrument));
        page.WaitForElement("[data-testid=check-instrument]", Patience).Click();
        page.WaitForAssertion(() => Assert.Equal("3.31", page.Find("[data-testid=control-form] [data-cell='0.C']").GetAttribute("value")), Patience);
        Assert.Equal(subject, page.Find("[data-testid=control-form]").GetAttribute("data-subject"));

        await The<KeepDraft>().Run(Founder, new(subject, "remarks", "new argon bottle", null), Cancellation);
        page.WaitForAssertion(() => Assert.Equal("new argon bottle", page.Find("[data-testid=control-form] [data-field=remarks] input").GetAttribute("value")), Patience);
        await page.InvokeAsync(() => page.Find("[data-testid=control-form]").Submit());

        page.WaitForElement("[data-testid=check-saved]", Patience);
        Assert.Empty(await The<DraftRows>().Load(subject, Cancellation));
        Assert.Equal("new argon bottle", Assert.Single((await The<InstrumentPage>().Load(instrument, Cancellation))!.Samples).Remarks);
    }

    [Fact]
    public async Task ControlSample_GoodAgainAndNothingMeasuredMeanwhile_LeavesNoHeatToCheckAgain()
    {
        var (instrument, reference) = await Set();
        await Check(instrument, reference, 3.30);
        await Check(instrument, reference, 3.45);
        SignIn(Role.Melter);
        var page = Render<InstrumentDetail>(parameters => parameters.Add(p => p.Id, instrument));
        Assert.Contains("No sample of a heat", page.WaitForElement("[data-testid=doubted]", Patience).TextContent, StringComparison.Ordinal);
        Assert.Equal("C on White iron block", page.Find("[data-testid=broken-charts]").TextContent.Split(": ")[1]);

        await Check(instrument, reference, 3.30);

        page.WaitForElement("[data-check=good]", Patience);
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("[data-testid=doubted], [data-testid=broken-charts]")), Patience);
    }

    [Fact]
    public void Trend_WithoutResults_SaysWhereTheyComeFromAndAsksForNoRules()
    {
        SignIn(Role.Supervisor);
        The<NavigationManager>().NavigateTo("/laboratory/trends?quantity=Pb");
        var page = Render<TrendList>();

        Assert.Contains("entered at the heats", page.WaitForElement("[data-testid=no-results]", Patience).TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[data-testid=rules], [data-testid=hit-rate]"));
    }

    [Fact]
    public void Doubted_MoreThanAreListed_SaysSo()
    {
        SignIn(Role.Metallurgist);
        var now = Now;
        var heat = new MeasuredHeat(HeatId, "TB-1", "500-7", 2, now, now);
        var card = Render<DoubtedCard>(p => p.Add(c => c.Doubt, new(null, now) { Elements = [Element.C] }).Add(c => c.Heats, [heat]).Add(c => c.IsMore, true).Add(c => c.Code, "spark-1"));

        Assert.NotNull(card.Find("[data-testid=more]"));
        Assert.StartsWith("C: a control sample", card.Find(".caution").TextContent, StringComparison.Ordinal);
        Assert.Equal($"/recall?from=Instrument&of=spark-1&until={HistoryAddress.Write(now)}", card.Find("[data-testid=to-recall]").GetAttribute("href"));
        card.Render(p => p.Add(c => c.IsMore, false));
        Assert.Empty(card.FindAll("[data-testid=more]"));
    }

    [Fact]
    public async Task Rules_ByChoice_StayInTheAddressAndSayTheirFalseAlarms()
    {
        var (instrument, reference) = await Set();
        await Check(instrument, reference, 3.30);
        SignIn(Role.Metallurgist);
        var page = Render<InstrumentDetail>(parameters => parameters.Add(p => p.Id, instrument));
        page.WaitForElement("[data-testid=false-alarms]", Patience);
        Assert.Contains("every 217 results", page.Find("[data-testid=false-alarms]").TextContent, StringComparison.Ordinal); // one beyond three, nine on one side

        await page.InvokeAsync(() => page.Find("[data-rule=TwoOfThreeBeyondTwo]").Click());

        Assert.EndsWith("?rules=OneBeyondThree.TwoOfThreeBeyondTwo.NineOnOneSide", The<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Trend_OfTheSamples_LeadsFromAPointToTheHeatAndSaysTheHitRate()
    {
        await GoodSample();
        SignIn(Role.Supervisor);
        The<NavigationManager>().NavigateTo($"/laboratory/trends?quantity=Si&grade={GradeId}");
        var page = Render<TrendList>();
        page.WaitForElement("[data-testid=control-chart] circle.chart-point", Patience);

        Assert.Equal($"/heats/{HeatId}", page.Find("[data-testid=chart-table] a").GetAttribute("href"));
        Assert.Contains("no heat can be judged (1 lack", page.Find("[data-testid=hit-rate]").TextContent, StringComparison.Ordinal); // copper was not measured
        Assert.StartsWith("/laboratory/trends.csv?quantity=Si", page.Find("[data-testid=export]").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Trend_OfACoinWithRemarks_TellsThemOnTheChartAndInItsTable()
    {
        await The<RecordSample>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[Read("Si", 1.5)]], Remarks: "new lining"), Cancellation);
        await The<RecordSample>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, null, SampleKind.AfterCorrection, [[Read("Si", 1.6)]]), Cancellation);
        SignIn(Role.Supervisor);
        The<NavigationManager>().NavigateTo($"/laboratory/trends?quantity=Si&grade={GradeId}");
        var page = Render<TrendList>();
        page.WaitForElement("[data-testid=control-chart] circle.chart-point", Patience);

        Assert.Equal(["new lining", "–"], page.FindAll("[data-testid=chart-table] tbody tr").Select(row => row.LastElementChild!.TextContent));
        Assert.Contains("new lining", page.Find(".chart-drawing").TextContent, StringComparison.Ordinal);
    }

    /// <summary>Twenty heats: first coins of 1.50 and 1.54 by turns, each followed by a coin of the corrected bath at 1.80.</summary>
    [Fact]
    public void TrendControl_OfSeveralCoinsAHeat_TakesTheFirstOfEach()
    {
        var points = Enumerable.Range(0, 20).SelectMany(heat => new[] { heat % 2 == 0 ? 1.50 : 1.54, 1.80 }.Select((percent, coin) => new TrendPoint(
            heat * 2 + coin, heat, $"H{heat}", DateTimeOffset.UnixEpoch.AddHours(heat).AddMinutes(coin), SampleKind.Bath, null, percent, 1, "Spark") { IsFirst = coin == 0 })).ToList();
        var control = TrendControl.Of(points, RunRules.Usual);

        Assert.Equal(1.52, control.Limits!.Centre, 9);
        Assert.Equal(0.04 / 1.128, control.Limits.StandardDeviation, 1e-4); // 1.128 is rounded
        Assert.Empty(control.Signals);
        Assert.All(control.Moving, range => Assert.Equal(0.04, range, 9));
        Assert.Null(TrendControl.Of([.. points.Take(38)], RunRules.Usual).Limits);
        Assert.Empty(TrendControl.Of([.. points.Where(p => !p.IsFirst)], RunRules.Usual).Firsts); // read by another instrument, the later coins alone
    }

    /// <summary>Inside all of its window, copper too; the words name the window of its time and no other.</summary>
    [Fact]
    public async Task Trend_OfACoinThatHits_SaysThatEachIsHeldAgainstTheWindowOfItsTime()
    {
        await The<RecordSample>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[Read("C", 3.65), Read("Si", 1.5), Read("Mn", 0.3), Read("Cu", 0.05)]]), Cancellation);
        SignIn(Role.Supervisor);
        The<NavigationManager>().NavigateTo($"/laboratory/trends?quantity=Si&grade={GradeId}");
        var page = Render<TrendList>();

        Assert.Equal(
            "First coin inside the whole furnace window: 100 % (1 of 1 heats shown; 0 could not be judged). Each by the window that held when it was taken.",
            page.WaitForElement("[data-testid=hit-rate]", Patience).TextContent.Replace('\u00a0', ' '));
    }

    [Fact]
    public void ControlSample_OfMoreBurnsThanThree_GetsFurtherRows()
    {
        var entry = new InstrumentView(1, Guid.Empty, "s", "Spark", InstrumentKind.Spark, false, null, true, []);
        SignIn(Role.Inspector);
        var form = Render<ControlSampleForm>(p => p.Add(f => f.Instrument, entry).Add(f => f.References, [new ReferenceView(1, "block-1", "White iron block", "invented for a test", true, [new(Element.C, 3.30, 0.02)])]));
        form.Find("[data-testid=check-instrument]").Click();
        Assert.Empty(form.FindAll("[data-cell='3.C']"));

        form.Find("[data-testid=another-burn]").Click();

        Assert.NotEmpty(form.FindAll("[data-cell='3.C']"));
        for (var row = 5; row <= SampleDraft.MostBurns; row++) form.Find("[data-testid=another-burn]").Click();
        Assert.True(form.Find("[data-testid=another-burn]").HasAttribute("disabled"));
    }

    [Fact]
    public async Task Trend_OfAGradeInAllFurnaces_SaysThatLimitsNeedOne()
    {
        await GoodSample();
        SignIn(Role.Supervisor);
        The<NavigationManager>().NavigateTo($"/laboratory/trends?quantity=Si&grade={GradeId}");
        var page = Render<TrendList>();
        page.WaitForState(() => page.FindAll("[data-testid=limit-words]").Count > 0, Patience);
        Assert.Contains("choose a grade and a furnace", page.Find("[data-testid=limit-words]").TextContent, StringComparison.Ordinal);

        The<NavigationManager>().NavigateTo($"/laboratory/trends?quantity=Si&grade={GradeId}&furnace={FurnaceId}");
        page = Render<TrendList>();
        page.WaitForState(() => page.FindAll("[data-testid=limit-words]").Count > 0, Patience);
        Assert.Contains("Heats: 1; none before 20", page.Find("[data-testid=limit-words]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Trend_OfTwoInstruments_HasLimitsOfOneAlone()
    {
        await GoodSample();
        var (instrument, _) = await Set();
        await The<RecordSample>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[Read("Si", 1.48)]]) { InstrumentId = instrument }, Cancellation);
        SignIn(Role.Supervisor);
        The<NavigationManager>().NavigateTo($"/laboratory/trends?quantity=Si&grade={GradeId}&furnace={FurnaceId}");
        var page = Render<TrendList>();
        page.WaitForState(() => page.FindAll("[data-testid=limit-words]").Count > 0, Patience);
        Assert.Contains("of one instrument", page.Find("[data-testid=limit-words]").TextContent, StringComparison.Ordinal);
        Assert.Equal(["all", "instrument not said", "Spark"], page.FindAll("[data-field=instrument] option").Select(option => option.TextContent));

        The<NavigationManager>().NavigateTo($"/laboratory/trends?quantity=Si&grade={GradeId}&furnace={FurnaceId}&instrument={instrument}");
        page = Render<TrendList>();
        page.WaitForState(() => page.FindAll("[data-testid=limit-words]").Count > 0, Patience);
        Assert.Contains("Heats: 0; none before 20", page.Find("[data-testid=limit-words]").TextContent, StringComparison.Ordinal); // its coin was the heat's second
        Assert.EndsWith("drawn as they stand today.", page.Find("[data-testid=limit-words]").TextContent, StringComparison.Ordinal);

        The<NavigationManager>().NavigateTo($"/laboratory/trends?quantity=Si&grade={GradeId}&furnace={FurnaceId}&instrument=0");
        page = Render<TrendList>();
        page.WaitForState(() => page.FindAll("[data-testid=limit-words]").Count > 0, Patience);
        Assert.Contains("Heats: 1; none before 20", page.Find("[data-testid=limit-words]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Trend_OfADerivedQuantity_SaysWhatItNeedsAndIsDrawnInItsUnit()
    {
        await GoodSample();
        SignIn(Role.Supervisor);
        The<NavigationManager>().NavigateTo("/laboratory/trends?quantity=Sc");
        var page = Render<TrendList>();
        Assert.EndsWith("Drawn are coins that measured C, Si, P.", page.WaitForElement("[data-testid=no-results]", Patience).TextContent, StringComparison.Ordinal);
        Assert.Contains("Sc", page.FindAll("[data-field=quantity] option").Select(option => option.GetAttribute("value")));
        Assert.DoesNotContain(page.FindAll("[data-field=quantity] option"), option => option.GetAttribute("value") is "pearliteFactor" or "liquidusC"); // of poured iron; the line of CE over again

        await The<RecordSample>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[Read("C", 3.60), Read("Si", 1.50), Read("P", 0.006)]]), Cancellation);

        var chart = page.WaitForElement("[data-testid=control-chart]", Patience);
        Assert.Contains("the last 0.958,", chart.QuerySelector("svg")!.GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.DoesNotContain("%", chart.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ControlSample_WithRemarks_HasThemOnTheChart()
    {
        var (instrument, reference) = await Set();
        await Check(instrument, reference, 3.30);
        await The<RecordControlSample>().Run(Founder, new(
            Guid.NewGuid(), Now, instrument, reference, [[new("C", 3.31, false, "3.31")]], "new argon bottle"), Cancellation);
        SignIn(Role.Melter);
        var page = Render<InstrumentDetail>(parameters => parameters.Add(p => p.Id, instrument));
        page.WaitForElement("[data-testid=chart-table]", Patience);

        Assert.Contains(page.FindAll("[data-testid=control-chart] text"), text => text.TextContent == "new argon bottle");
    }

    private async Task<(long Instrument, long Reference)> Set() => (
        (await The<AddInstrument>().Run(Founder, new(Guid.NewGuid(), Now, "spark-1", "Spark", InstrumentKind.Spark, false, [new("C", 0.02, 2)], "invented for a test"), Cancellation)).Value,
        (await The<AddReferenceMaterial>().Run(Founder, new(Guid.NewGuid(), Now, "block-1", "White iron block", "invented for a test", [new("C", 3.30, 0.02)]), Cancellation)).Value);

    private async Task Check(long instrument, long reference, double carbon) => Assert.True((await The<RecordControlSample>().Run(Founder, new(
        Guid.NewGuid(), Now, instrument, reference, [[new("C", carbon, false, "3.3")]]), Cancellation)).Succeeded);

    private async Task Coin(long instrument) => Assert.True((await The<RecordSample>().Run(Founder, new(
        Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[new("C", 3.6, false, "3.6"), new("Si", 1.5, false, "1.5")]], InstrumentId: instrument), Cancellation)).Succeeded);

    private static void Type<TPage>(IRenderedComponent<TPage> page, string form, string selector, string text)
        where TPage : IComponent => page.Find($"[data-testid={form}] {selector}").Change(text);
}

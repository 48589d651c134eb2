using Bunit;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Heats;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Tests.Pages.Heats;

/// <summary>A temperature that is put right from the timeline, and the heat as it stood before.</summary>
public sealed class AsItStoodTests : HeatTest
{
    [Fact]
    public async Task Fact_CorrectedFromTheTimeline_StandsUnderItsCorrectionWithTheReason()
    {
        var page = await Corrected();

        var fact = page.Find("[data-testid=timeline] [data-kind=Temperature]");
        Assert.Contains("bath at 1478", fact.TextContent, StringComparison.Ordinal);
        Assert.Contains("bath at 1748", fact.QuerySelector("[data-testid=earlier]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("digits swapped", fact.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Correction_WithoutAReason_IsToldAtItsFieldAndKeepsWhatWasTyped()
    {
        var page = await Began();
        page.Find("[data-testid=fact-correction] [data-field=temperatureC] input").Change("1478");
        await page.Find("[data-testid=fact-correction]").SubmitAsync();

        Assert.Equal("text.missing", Error(page, "fact-correction", "reason"));
        Assert.Equal("1478", page.Find("[data-testid=fact-correction] [data-field=temperatureC] input").GetAttribute("value"));
        Assert.Equal(1748, Assert.Single((await Heat()).Temperatures).TemperatureC);
    }

    [Fact]
    public async Task Heat_AsItStoodBeforeACorrection_ShowsTheFormerValueAndOffersNothing()
    {
        var link = (await Corrected()).Find("[data-testid=as-it-stood]").GetAttribute("href")!;
        The<NavigationManager>().NavigateTo(link);
        var then = Open();

        Assert.Contains("1748", then.Find("[data-testid=figures]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("1478", then.Find("[data-testid=timeline]").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(then.FindAll(".notice-heading"));
        Assert.Empty(then.FindAll("form"));
        Assert.Empty(then.FindAll(".press-primary"));
        Assert.Equal($"/heats/{HeatId}", then.Find(".notice a.press").GetAttribute("href"));
    }

    [Fact]
    public async Task Lines_ThatTheProgramBookedByItself_AreToldInTheWordsOfThePage()
    {
        await WeighAll();
        await GoodSample();
        var before = Now.AddMinutes(-1);
        await The<DipFurnace>().Run(Founder, new(Guid.NewGuid(), Now, FurnaceId, 1900, null, "load cell"), Cancellation);
        await The<WeighIn>().Run(Founder, new(Guid.NewGuid(), before, HeatId, MaterialIds["steel"], 10, true), Cancellation);
        var heat = (await Heat()).Heat;
        await The<CloseHeat>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, heat.Version, heat.LiquidKg * 1.01), Cancellation);

        var timeline = Open().Find("[data-testid=timeline]").TextContent;

        Assert.Contains("something that had happened before came in late", timeline, StringComparison.Ordinal);
        Assert.Contains("emptied at the end of the heat", timeline, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Start_PutRightFromTheHead_StandsInTheTimelineWithWhatStoodBefore()
    {
        var page = Open(Role.Supervisor);
        await page.InvokeAsync(() => page.Find("[data-testid=correct-heat]").Click());
        HasKeyboard(page);
        Type(page, "heat-correction", "startedAt", "25");
        Type(page, "heat-correction", "reason", "forgotten to press");
        await page.Find("[data-testid=heat-correction]").SubmitAsync();

        page.WaitForState(() => page.FindAll("[data-kind=HeatCorrection]").Count > 0, Patience);
        Assert.Empty(page.FindAll("[data-testid=heat-correction]"));
        Assert.Contains("forgotten to press", page.Find("[data-kind=HeatCorrection]").TextContent, StringComparison.Ordinal);
        var stood = Assert.Single((await Heat()).OfItself);
        Assert.Equal(stood.FormerStartedAt.AddMinutes(-25), (await Heat()).Heat.StartedAt);
    }

    [Fact]
    public void Start_OfAHeat_IsNotPutRightByAMelter() => Assert.Empty(Open().FindAll("[data-testid=correct-heat]"));

    [Fact]
    public async Task Cup_WhoseFigureWasMistyped_IsPutRightAndTheOthersKeepTheirText()
    {
        await The<RecordSample>().Run(Founder, new(
            Guid.NewGuid(), Now, HeatId, null, SampleKind.Cup, [],
            Figures: [new(FigureQuantity.LiquidusC, 1169.8, "1169.8"), new(FigureQuantity.EutecticLowC, 1141, "1141.0")]), Cancellation);
        var page = Open();
        await page.InvokeAsync(() => page.Find("[data-testid=timeline] [data-kind=Sample] button").Click());
        page.WaitForElement("[data-testid=fact-correction] [data-field='figures.LiquidusC'] input", Patience);
        Assert.Empty(page.FindAll("[data-testid=fact-correction] [data-field='figures.ChillMm']"));
        await page.InvokeAsync(() => page.Find("[data-testid=fact-correction] [data-field='figures.LiquidusC'] input").Change("1196.8"));
        await page.InvokeAsync(() => page.Find("[data-testid=fact-correction] [data-field=reason] input").Change("digits swapped"));
        await page.Find("[data-testid=fact-correction]").SubmitAsync();
        page.WaitForElement("[data-testid=earlier]", Patience);

        var cups = (await Heat()).Samples.Where(sample => sample.Kind == SampleKind.Cup).OrderBy(sample => sample.Id).ToList();
        Assert.Equal([true, false], cups.Select(cup => cup.Origin.IsCorrected));
        Assert.Equal([(1169.8, "1169.8"), (1141, "1141.0")], cups[0].Figures.Select(f => (f.Value, f.InstrumentText)));
        Assert.Equal([(1196.8, "1196.8"), (1141, "1141.0")], cups[1].Figures.Select(f => (f.Value, f.InstrumentText)));
    }

    private async Task<IRenderedComponent<HeatDetail>> Began()
    {
        await The<RecordTemperature>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, null, 1748), Cancellation);
        var page = Open();
        await page.InvokeAsync(() => page.Find("[data-testid=timeline] [data-kind=Temperature] button").Click());
        page.WaitForState(() => page.FindAll("[data-testid=fact-correction] [data-field=temperatureC]").Count > 0, Patience);
        return page;
    }

    private async Task<IRenderedComponent<HeatDetail>> Corrected()
    {
        var page = await Began();
        page.Find("[data-testid=fact-correction] [data-field=temperatureC] input").Change("1478");
        page.Find("[data-testid=fact-correction] [data-field=reason] input").Change("digits swapped");
        await page.Find("[data-testid=fact-correction]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=earlier]").Count > 0, Patience);
        return page;
    }
}

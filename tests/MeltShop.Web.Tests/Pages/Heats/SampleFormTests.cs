using AngleSharp.Dom;
using Bunit;
using MeltShop.Operations.Drafts;
using MeltShop.Operations.Laboratory;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Pages.Heats;
using Microsoft.EntityFrameworkCore;
using Element = MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Web.Tests.Pages.Heats;

public sealed class SampleFormTests : HeatTest
{
    [Fact]
    public async Task Burns_TypedWithCommaOrPoint_AreKeptLetterByLetterAndMakeABath()
    {
        var page = OpenForm();
        Burn(page, 0, ("C", "3,64"), ("Si", "1.50"), ("P", "<0,02"));
        Burn(page, 1, ("C", "3.66"), ("Si", "1,52"), ("P", "0.03"));
        Type(page, "sample-form", "coinNumber", "17");
        Type(page, "sample-form", "observedAt", "20");
        await page.Find("[data-testid=sample-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=sample-saved]").Count > 0, Patience);

        var heat = await Heat();
        var sample = Assert.Single(heat.Samples);
        Assert.Equal(HeatState.Bath, heat.Heat.State);
        Assert.Equal("17", sample.CoinNumber);
        Assert.Equal(3.65, sample.Mean(Element.C)!.Value, 1e-9);
        Assert.Equal(2, sample.Burns.Count);
        Assert.Contains(sample.Burns[0].Readings, reading => reading is { BelowDetection: true, InstrumentText: "<0,02" });
        Assert.Null(sample.Mean(Element.S));
        Assert.True(sample.Origin.EnteredAt - sample.Origin.ObservedAt > TimeSpan.FromMinutes(19));
        page.WaitForAssertion(() => Assert.Contains("entered ", page.Find("[data-testid=sample] .origin").TextContent, StringComparison.Ordinal), Patience);
    }

    [Theory]
    [InlineData("101", "number.tooLarge")]
    [InlineData("-1", "number.tooSmall")]
    [InlineData("many", "number.notANumber")]
    public async Task Cell_Wrong_IsToldWithBurnAndElementAndNothingIsRecorded(string typed, string code)
    {
        var page = OpenForm();
        Burn(page, 0, ("C", "3.6"));
        Burn(page, 1, ("Si", typed));
        await page.Find("[data-testid=sample-form]").SubmitAsync();

        var told = page.WaitForElement("[data-testid=cell-findings] li");
        Assert.Equal(code, told.GetAttribute("data-code"));
        Assert.StartsWith("Burn 2, Si", told.TextContent, StringComparison.Ordinal);
        Assert.Equal(typed, Cell(page, 1, "Si").GetAttribute("value"));
        Assert.Equal("3.6", Cell(page, 0, "C").GetAttribute("value"));
        Assert.Empty((await Heat()).Samples);
    }

    [Fact]
    public async Task Burn_OverAHundred_IsToldAtItsBurn()
    {
        var page = OpenForm();
        Burn(page, 2, ("C", "60"), ("Si", "60"));
        await page.Find("[data-testid=sample-form]").SubmitAsync();

        var told = page.WaitForElement("[data-testid=cell-findings] li");
        Assert.Equal("analysis.sum", told.GetAttribute("data-code"));
        Assert.StartsWith("Burn 3", told.TextContent, StringComparison.Ordinal);
        Assert.Equal("60", Cell(page, 2, "C").GetAttribute("value"));
    }

    [Fact]
    public async Task Table_Empty_IsToldAndNothingIsRecorded()
    {
        var page = OpenForm();
        await page.Find("[data-testid=sample-form]").SubmitAsync();

        Assert.Equal("sample.noBurns", page.Find("[data-testid=sample-form] [data-testid=findings] li").GetAttribute("data-code"));
        Assert.Empty((await Heat()).Samples);
    }

    [Fact]
    public void Element_OutsideTheWindow_IsASpareColumnUntilItHoldsAValue()
    {
        var page = OpenForm();
        Assert.NotNull(page.Find("td.spare [data-cell='0.Te']"));
        Cell(page, 0, "Te").Change("0.001");

        Assert.Empty(page.FindAll("td.spare [data-cell='0.Te']"));
        Assert.Empty(page.FindAll("[data-cell='0.Fe']"));
    }

    [Fact]
    public async Task Instrument_ThatSendsAMean_TakesOneRowAndInventsNoScatter()
    {
        await The<AddInstrument>().Run(Founder, new(Guid.NewGuid(), Now, "spark-2", "Spark that sends means", InstrumentKind.Spark, true, [new("C")]), Cancellation);
        var page = OpenForm();
        page.WaitForState(() => page.FindAll("[data-testid=sample-form] [data-cell='1.C']").Count == 0, Patience); // the only instrument stands there at once
        Burn(page, 0, ("C", "3,64"));
        Choose(page, "fracture", "grey");
        await page.Find("[data-testid=sample-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=sample-saved]").Count > 0, Patience);

        var sample = Assert.Single((await Heat()).Samples);
        Assert.Equal((true, true, "Spark that sends means"), (sample.IsMeanOnly, sample.GreyFracture, sample.Instrument?.Name));
        page.WaitForAssertion(() => Assert.Contains("how its burns scattered is not known", page.Find("[data-testid=scatter]").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task Cup_TakesFiguresInsteadOfBurns()
    {
        var page = OpenForm();
        Choose(page, "kind", "Cup");
        page.WaitForState(() => page.FindAll("[data-testid=sample-form] [data-cell]").Count == 0, Patience);
        Type(page, "sample-form", "figures.LiquidusC", "1152,5");
        await page.Find("[data-testid=sample-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=sample-saved]").Count > 0, Patience);

        var figure = Assert.Single(Assert.Single((await Heat()).Samples).Figures);
        Assert.Equal((FigureQuantity.LiquidusC, 1152.5, "1152,5"), (figure.Quantity, figure.Value, figure.InstrumentText));
    }

    [Fact]
    public async Task Coin_OnItsWay_WaitsUntilItsResultIsEntered()
    {
        var page = Open();
        Press(page, "Coin on its way");
        page.WaitForElement("[data-testid=coin-form]", Patience);
        Type(page, "coin-form", "coinNumber", "17");
        Type(page, "coin-form", "observedAt", "12");
        await page.Find("[data-testid=coin-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-coin=\"17\"]").Count > 0, Patience);

        Press(page, "Result of coin 17");
        page.WaitForElement("[data-cell='0.C']", Patience);
        Burn(page, 0, ("C", "3,64"));
        await page.Find("[data-testid=sample-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-coin]").Count == 0, Patience);

        var sample = Assert.Single((await Heat()).Samples);
        Assert.Equal("17", sample.CoinNumber);
        Assert.True(sample.Origin.EnteredAt - sample.Origin.ObservedAt > TimeSpan.FromMinutes(11));
    }

    /// <summary>Its result is saved long after the form was opened: the minute at which the coin was taken does not move with it.</summary>
    [Fact]
    public async Task Coin_OnItsWay_WasTakenWhenThatWasSaidUnlessSomebodySaysOtherwise()
    {
        var taken = Now.AddMinutes(-12);
        foreach (var number in new[] { "17", "18" })
        {
            await The<SendCoin>().Run(Founder, new(Guid.NewGuid(), taken, HeatId, null, SampleKind.Bath, number), Cancellation);
        }

        var page = Open();
        foreach (var number in new[] { "17", "18" })
        {
            Press(page, $"Result of coin {number}");
            page.WaitForElement("[data-cell='0.C']", Patience);
            if (number == "18") Type(page, "sample-form", "observedAt", "20");
            Burn(page, 0, ("C", "3,64"));
            await page.Find("[data-testid=sample-form]").SubmitAsync();
            page.WaitForState(() => page.FindAll($"[data-coin=\"{number}\"]").Count == 0, Patience);
        }

        var samples = (await Heat()).Samples.ToDictionary(sample => sample.CoinNumber!);
        Assert.Equal(taken, samples["17"].Origin.ObservedAt, TimeSpan.FromMilliseconds(1)); // kept to the microsecond
        Assert.InRange((samples["18"].Origin.EnteredAt - samples["18"].Origin.ObservedAt).TotalMinutes, 19.9, 20.5);
    }

    [Fact]
    public async Task Coins_OfOneHeat_KeepWhatIsTypedOfEachApart()
    {
        foreach (var number in new[] { "17", "18", "19" })
            await The<SendCoin>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, number), Cancellation);
        await Draft("17", "3.61");
        await Draft("18", "3.72");
        await Draft("19", "3.83");

        var page = Answer("18");
        page.WaitForAssertion(() => Assert.Equal("3.72", Cell(page, 0, "C").GetAttribute("value")), Patience);
        await page.Find("[data-testid=sample-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-coin=\"18\"]").Count == 0, Patience);
        Press(page, "Coin 19 is lost");
        Type(page, "lost-form", "reason", "fell apart");
        await page.Find("[data-testid=lost-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-coin=\"19\"]").Count == 0, Patience);

        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        Assert.Equal("3.61", Assert.Single(await db.Drafts.ToListAsync(Cancellation)).Text);

        IRenderedComponent<HeatDetail> Answer(string number)
        {
            var opened = Open();
            Press(opened, $"Result of coin {number}");
            opened.WaitForElement("[data-cell='0.C']", Patience);
            return opened;
        }

        async Task Draft(string number, string text)
        {
            var subject = Answer(number).Find("[data-testid=sample-form]").GetAttribute("data-subject")!;
            Assert.True((await The<KeepDraft>().Run(Founder, new(subject, "burns[0].C", text, null), Cancellation)).Succeeded);
        }
    }

    [Fact]
    public async Task Coin_Lost_NeedsAReasonAndWaitsNoMore()
    {
        await The<SendCoin>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, "18"), Cancellation);
        var page = Open();
        Press(page, "Coin 18 is lost");
        page.WaitForElement("[data-testid=lost-form]", Patience);
        await page.Find("[data-testid=lost-form]").SubmitAsync();
        Assert.Equal("text.missing", Error(page, "lost-form", "reason"));
        Type(page, "lost-form", "reason", "fell apart");
        await page.Find("[data-testid=lost-form]").SubmitAsync();

        page.WaitForState(() => page.FindAll("[data-coin]").Count == 0, Patience);
        Assert.Empty((await Heat()).Coins);
    }

    [Fact]
    public async Task Typed_ThrownAway_IsAskedFirstAndGoesForAll()
    {
        var page = OpenForm();
        var subject = page.Find("[data-testid=sample-form]").GetAttribute("data-subject")!;
        await The<KeepDraft>().Run(Founder, new(subject, "burns[0].C", "3.61", null), Cancellation);
        Press(page, "Throw away what was typed");
        Press(page, "Keep it");
        Assert.Empty(page.FindAll("[data-testid=throw-away-ask]"));
        Assert.NotEmpty(page.FindAll("[data-testid=sample-form]"));
        Assert.Equal(1, await Lying());

        Press(page, "Throw away what was typed");
        Press(page, "Throw it away");
        page.WaitForState(() => page.FindAll("[data-testid=sample-form]").Count == 0, Patience);
        Assert.Equal(0, await Lying());

        async Task<int> Lying()
        {
            await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
            return await db.Drafts.CountAsync(Cancellation);
        }
    }

    [Fact]
    public async Task Typed_WhichCannotBeThrownAway_LiesOnAndSaysSo()
    {
        var page = OpenForm();
        await The<KeepDraft>().Run(Founder, new(page.Find("[data-testid=sample-form]").GetAttribute("data-subject")!, "burns[0].C", "3.61", null), Cancellation);
        page.WaitForAssertion(() => Assert.Equal("3.61", Cell(page, 0, "C").GetAttribute("value")));
        await Break("Drafts");
        Press(page, "Throw away what was typed");
        Press(page, "Throw it away");

        page.WaitForAssertion(() => Assert.Equal("program.failed", page.Find("[data-testid=throw-away-ask] [data-testid=findings] li").GetAttribute("data-code")));
        Assert.Equal("3.61", Cell(page, 0, "C").GetAttribute("value"));
        await Mend("Drafts");
        Press(page, "Throw it away");
        page.WaitForState(() => page.FindAll("[data-testid=sample-form]").Count == 0);
    }

    [Fact]
    public async Task WhatOthersTyped_UnreadOnce_IsShownAsSoonAsTheyTypeAgain()
    {
        await Break("Drafts");
        var page = OpenForm();
        The<ChangeNotices>().Publish(new ChangeNotice(ChangeKind.Draft, 0));
        await Task.Delay(ChangeNotices.Gathering * 4, Cancellation); // read again in vain, on any but the busiest machine
        await Mend("Drafts");
        await The<KeepDraft>().Run(Founder, new(page.Find("[data-testid=sample-form]").GetAttribute("data-subject")!, "burns[0].C", "3.61", null), Cancellation);

        page.WaitForAssertion(() => Assert.Equal("3.61", Cell(page, 0, "C").GetAttribute("value")));
    }

    private static void Choose(IRenderedComponent<HeatDetail> page, string path, string value) => page.Find($"[data-testid=sample-form] [data-field=\"{path}\"] select").Change(value);

    [Theory]
    [InlineData(false, "sample-saved")]
    [InlineData(true, "sample-form")] // what is typed by then is the next coin
    public async Task Sample_AcceptedLate_ClosesItsFormUnlessTheNextWasBegun(bool isTouched, string shown)
    {
        var page = OpenForm();

        await page.Find("[data-testid=sample-form]").TriggerEventAsync("onentryanswered", new EntryAnsweredEventArgs
        {
            Late = new Dictionary<string, string> { ["burns[0].C"] = "3.61" },
            IsTouched = isTouched,
        });

        Assert.Equal(shown, Assert.Single(page.FindAll("[data-testid=sample-form], [data-testid=sample-saved]")).GetAttribute("data-testid"));
    }

    private IRenderedComponent<HeatDetail> OpenForm()
    {
        var page = Open();
        Press(page, "Enter a sample");
        page.WaitForElement("[data-testid=sample-form]", Patience);
        return page;
    }

    private static IElement Cell(IRenderedComponent<HeatDetail> page, int burn, string element) => page.Find($"[data-cell=\"{burn}.{element}\"]");

    private static void Burn(IRenderedComponent<HeatDetail> page, int burn, params (string Element, string Text)[] cells)
    {
        foreach (var (element, text) in cells) Cell(page, burn, element).Change(text);
    }
}

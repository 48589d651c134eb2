using Bunit;
using MeltShop.Operations.Sites;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Sites;
using MeltShop.Web.Pages.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>The page of ladles and stations, and what the card and the pour make of their figures.</summary>
public sealed class EquipmentTests : LadleTest
{
    [Fact]
    public void Equipment_Opened_ShowsEachFigureWithItsSourceAndHowSureItIs()
    {
        var page = Open(Role.Metallurgist);
        var row = page.Find("[data-ladle=ladle-1000] [data-figure=MgFade]");

        Assert.Contains("0.0012\u00a0%/min", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("0.001 … 0.002", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("published", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("notes for teaching", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("45 … 51", page.Find("[data-ladle=ladle-1000] [data-figure=MgRecovery]").TextContent, StringComparison.Ordinal);
        Assert.Contains("not entered", page.Find("[data-ladle=ladle-1000] [data-figure=HouseMinutes]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ladle_TakenOutOfUse_SaysSoAndIsTakenBack()
    {
        var page = Open(Role.Metallurgist);
        string Card() => page.Find("[data-ladle=ladle-1000]").TextContent;

        await page.InvokeAsync(() => page.Find("[data-ladle=ladle-1000] [data-testid=use]").Submit());
        page.WaitForState(() => Card().Contains("no longer used", StringComparison.Ordinal), Patience);
        await page.InvokeAsync(() => page.Find("[data-ladle=ladle-1000] [data-testid=use]").Submit());
        page.WaitForState(() => !Card().Contains("no longer used", StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task Figure_SaidAnewWithABandBesideIt_IsRefusedAtTheFieldAndThenTaken()
    {
        var page = Open(Role.Metallurgist);
        await page.InvokeAsync(() => page.Find("[data-ladle=ladle-1000] [data-testid=say-figure]").Click());
        HasKeyboard(page);
        await page.InvokeAsync(() => page.Find("[data-testid=figure-form] [data-field=kind] select").Change(nameof(LadleFigureKind.HouseMinutes)));
        Type(page, "value", "10");
        Type(page, "least", "11");
        await page.InvokeAsync(() => page.Find("[data-testid=figure-form] [data-field=standing] select").Change(nameof(FigureStanding.Shop)));
        Type(page, "source", "house rule");
        await page.InvokeAsync(() => page.Find("[data-testid=figure-form]").Submit());
        page.WaitForState(() => page.FindAll("[data-field=least] .field-error").Count > 0, Patience);
        Type(page, "least", "8");
        await page.InvokeAsync(() => page.Find("[data-testid=figure-form]").Submit());

        page.WaitForState(() => page.Find("[data-ladle=ladle-1000] [data-figure=HouseMinutes]").TextContent.Contains("10\u00a0min", StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task Recovery_LearntFromTheFillings_StandsBesideTheOthersAndIsTakenOverByAPerson()
    {
        var page = Open(Role.Metallurgist); // the demo's 2 t ladle had two fillings, their samples drawn about the recovery of its card
        var note = page.Find("[data-ladle=ladle-2000] [data-testid=learnt]").TextContent;
        Assert.Contains("from so many fillings: 2", note, StringComparison.Ordinal);
        Assert.Contains("The card reckons with", note, StringComparison.Ordinal);
        Assert.Contains("published for this process", note, StringComparison.Ordinal);
        var before = page.Find("[data-ladle=ladle-2000] [data-figure=MgRecovery]").TextContent;
        Assert.NotNull(page.Find("[data-ladle=ladle-1000] [data-testid=learnt]"));
        Assert.Empty(page.FindAll("[data-ladle=ladle-1000] [data-testid=take-learnt]")); // one filling has no scatter

        var press = page.Find("[data-ladle=ladle-2000] [data-testid=take-learnt]");
        Assert.Equal(("figure-form", $"{page.Find("[data-ladle=ladle-2000] [data-testid=say-figure]").GetAttribute("data-of")} learnt"), (press.GetAttribute("data-opens"), press.GetAttribute("data-of"))); // pressed again when the page is loaded anew
        await page.InvokeAsync(() => press.Click());
        Assert.Equal(before, page.Find("[data-ladle=ladle-2000] [data-figure=MgRecovery]").TextContent); // not by itself
        await page.InvokeAsync(() => page.Find("[data-testid=figure-form]").Submit());

        page.WaitForState(() => page.Find("[data-ladle=ladle-2000] [data-figure=MgRecovery]").TextContent.Contains("Fillings of this ladle: 2", StringComparison.Ordinal), Patience);
        Assert.Contains("learnt", page.Find("[data-ladle=ladle-2000] [data-figure=MgRecovery] [data-testid=standing]").TextContent, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Equipment_ForAMelter_SaysWhoMayButTakesHowWarmALadleIs()
    {
        var page = Open(Role.Melter);

        Assert.Contains("metallurgist", page.Find(".read-only").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[data-testid=say-figure], [data-testid=add-ladle]"));
        page.Find("[data-ladle=ladle-1000] [data-say=Cold]").Click();
        page.WaitForState(() => page.FindAll("[data-ladle=ladle-1000] [data-preheat=Cold]").Count > 0, Patience);
        Assert.Contains("damp", page.Find("[data-ladle=ladle-1000] .caution").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Card_WithFiguresOfTheLadle_ShowsBandTemperaturesLargestMassAndWholeBags()
    {
        await BathSample();
        SignIn(Role.Melter);
        var page = Render<LadlePreparation>(parameters => parameters.Add(p => p.HeatId, HeatId));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        page.Find("[data-field=temperatureC] input").Change("1490");
        page.Find("[data-field=plannedKg] input").Change("800");
        page.WaitForState(() => page.FindAll("[data-testid=stop-weight]").Count > 0, Patience);

        Assert.Matches(@"0\.\d+\u00a0% at the last mould to 0\.\d+\u00a0%", page.Find("[data-testid=mg-band]").TextContent);
        Assert.Equal("1375\u00a0°C", page.Find("[data-testid=last-mould-c]").TextContent); // 60 K by the treatment, 10 min at 5.5 K
        Assert.NotNull(page.Find("[data-testid=largest-iron]"));
        page.Find("[data-field=bagKg] input").Change("10");
        await page.InvokeAsync(() => page.Find("[data-testid=take-bags]").Click());
        page.WaitForState(() => page.FindAll("[data-testid=needed-alloy]").Count > 0, Patience);
        Assert.StartsWith("20.0\u00a0kg", page.Find("[data-testid=alloy-kg]").TextContent.Trim(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("inMould", "per-mould", "Alloy in the chambers of all moulds together", "No magnesium clock runs in the ladle")]
    [InlineData("flowThrough", "flow-through", "Alloy in the chamber that the iron flows through", "from the end of the flow")]
    public async Task Card_WhereNothingLiesInALadlesPocket_IsOneOfItsOwn(string process, string note, string alloy, string clock)
    {
        await BathSample();
        var id = (await The<AddLadle>().Run(Founder, new(
            Guid.NewGuid(), Now, "chamber", "Chamber", process, 600, 40, process == "inMould" ? 75 : 40, null, 0.001, 4, "invented for a test"), Cancellation)).Value;
        SignIn(Role.Melter);
        var page = Render<LadlePreparation>(parameters => parameters.Add(p => p.HeatId, HeatId));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        page.Find("[data-field=ladleId] select").Change($"{id}");
        foreach (var (field, text) in new[] { ("temperatureC", "1480"), ("baseSulphurPercent", "0.009"), ("plannedKg", "400") }) page.Find($"[data-field={field}] input").Change(text);
        page.WaitForState(() => page.FindAll($"[data-testid={note}]").Count > 0, Patience);

        Assert.Contains(clock, page.Find($"[data-testid={note}]").TextContent, StringComparison.Ordinal);
        Assert.Contains(alloy, page.Find("[data-testid=pocket-card]").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll($"[data-testid={(note == "per-mould" ? "flow-through" : "per-mould")}]"));
    }

    [Fact]
    public async Task WireStation_OverTheStopWeight_OffersMetresAndSecondsOnceAndTakesThem()
    {
        var id = await Prepared();
        var station = (await The<AddLadle>().Run(Founder, new(
            Guid.NewGuid(), Now, "wire-station", "Wire station", "coredWire", 2000, 0, 40, null, 0.001, 4, "invented for a test"), Cancellation)).Value;
        await Say(station, LadleFigureKind.WireMagnesium, 35);
        await Say(station, LadleFigureKind.WireSpeed, 33);
        await Tap(id, (await Treated(id)).Treated!.Card!.StopWeightKg + 20);
        SignIn(Role.Melter);
        var page = Render<LadleDetail>(parameters => parameters.Add(p => p.Id, id));
        page.WaitForState(() => page.FindAll("[data-choice=wire]").Count > 0, Patience);

        Assert.Matches(@"\d+(\.\d)?\u00a0m of wire, \d+\u00a0s", page.Find("[data-testid=dose]").TextContent);
        page.Find("[data-testid=dose-form] [data-field=amount] input").Change("9");
        await page.InvokeAsync(() => page.Find("[data-testid=dose-form]").Submit());
        page.WaitForState(() => page.FindAll("[data-choice=wire]").Count == 0 || !page.Find("[data-testid=dose]").TextContent.Contains("9\u00a0m", StringComparison.Ordinal), Patience);
        Assert.Equal(9, (await Treated(id)).Pouring!.Doses.Single().WireMetres);
    }

    private async Task Say(long ladleId, LadleFigureKind kind, double value)
    {
        var version = (await The<EquipmentPage>().Load(Cancellation)).Ladles.Single(l => l.Ladle.Id == ladleId).Version;
        Assert.True((await The<SetLadleFigure>().Run(Founder, new(
            Guid.NewGuid(), Now, ladleId, version, kind, value, null, null, FigureStanding.Shop, "invented for a test"), Cancellation)).Succeeded);
    }

    [Fact]
    public async Task Equipment_OfMoreLadlesThanAreListed_SaysSo()
    {
        Assert.Empty(Open(Role.Melter).FindAll("[data-testid=more]"));
        await using (var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation))
        {
            db.AddRange(Enumerable.Range(0, 500).Select(number => new Ladle
            {
                Code = $"more-{number}", Name = $"More {number}", Process = "sandwich", FillLimitKg = 900, PocketKg = 20, MgRecoveryPercent = 50,
                MgFadePercentPerMinute = 0.001, HeatLossKPerMinute = 5, FiguresSource = "invented for a test", Version = Guid.NewGuid(),
            }));
            await db.SaveChangesAsync(Cancellation);
        }

        Assert.Equal("There are more than 500; only the first 500 are shown.", Open(Role.Melter).Find("[data-testid=more]").TextContent);
    }

    [Fact]
    public async Task Figure_SaidMoreOftenThanAPageReads_IsStillTheLastOne()
    {
        var ladle = (await The<EquipmentPage>().Load(Cancellation)).Ladles.Single(l => l.Ladle.Code == "ladle-1000").Ladle.Id;
        await using (var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation))
        {
            var said = await db.LadleFigures.AsNoTracking().FirstAsync(Cancellation);
            db.AddRange(Enumerable.Range(1, 502).Select(number => new LadleFigure
            {
                EntryKey = said.EntryKey, PersonId = said.PersonId, ObservedAt = Now.AddSeconds(number), EnteredAt = Now.AddSeconds(number),
                LadleId = ladle, Kind = LadleFigureKind.MgRecovery, Value = number / 10d, Standing = FigureStanding.Shop, Source = "invented for a test",
            }));
            await db.SaveChangesAsync(Cancellation);
        }

        Assert.Equal(50.2, (await The<EquipmentPage>().Load(Cancellation)).Ladles.Single(l => l.Ladle.Id == ladle).Figures.Single(f => f.Kind == LadleFigureKind.MgRecovery).Value);
    }

    private IRenderedComponent<EquipmentList> Open(string role)
    {
        SignIn(role);
        var page = Render<EquipmentList>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }

    private static void Type(IRenderedComponent<EquipmentList> page, string path, string text) =>
        page.Find($"[data-testid=figure-form] [data-field={path}] input").Change(text);
}

using Bunit;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Pages.Ladles;

namespace MeltShop.Web.Tests.Pages.Ladles;

public sealed class LadleDetailTests : LadleTest
{
    [Fact]
    public void Ladle_Unknown_IsMissing()
    {
        SignIn(Role.Melter);
        var page = Render<LadleDetail>(parameters => parameters.Add(p => p.Id, 4711));

        page.WaitForState(() => page.FindAll("[data-state=missing]").Count > 0, Patience);
    }

    [Fact]
    public async Task Tap_OverTheStopWeight_SaysWhatToDoAndLeavesTheAlloy()
    {
        var id = await Prepared();
        var (alloy, stop) = ((await Treated(id)).Treated!.Card!.AlloyKg, (await Treated(id)).Treated!.Card!.StopWeightKg);
        var page = Open(id);
        page.Find("[data-testid=tap-form] [data-field=kg] input").Change((Math.Ceiling(stop) + 20).ToString(System.Globalization.CultureInfo.InvariantCulture));
        page.Find("[data-testid=tap-form]").Submit();
        page.WaitForState(() => page.FindAll("[data-ladle-state=Tapped]").Count > 0, Patience);

        Assert.Contains("Never add alloy to the pocket", page.Find("[data-testid=over-stop]").TextContent, StringComparison.Ordinal);
        Assert.Equal(alloy, (await Treated(id)).Treated!.Card!.AlloyKg);
        Assert.NotNull(page.Find("[data-testid=mg-curve]"));
    }

    [Fact]
    public async Task Ladle_ReadByAnAdministrator_OffersNothingToEnterAndSaysWhoMay()
    {
        var page = Open(await Prepared(), Role.Administrator);

        Assert.Empty(page.FindAll("form"));
        Assert.Contains("melter, metallurgist", page.Find("[data-testid=read-only]").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll("[data-testid=stop-weight]"));
    }

    [Fact]
    public async Task Ladle_ThatWillNotBeTapped_NeedsAReasonAndGoesByTheEntryPath()
    {
        var page = Open(await Prepared());
        await page.InvokeAsync(() => page.FindAll("button").Single(button => button.TextContent == "This ladle will not be tapped").Click());
        var form = page.WaitForElement("[data-testid=abandon-form]", Patience);
        Assert.Equal("AbandonPocket", form.GetAttribute("data-entry"));
        await form.SubmitAsync();
        page.WaitForElement("[data-testid=abandon-form] [data-code='text.missing']", Patience);
        page.Find("[data-testid=abandon-form] [data-field=reason] input").Change("crane stands still");
        await page.Find("[data-testid=abandon-form]").SubmitAsync();

        page.WaitForElement("[data-ladle-state=Abandoned]", Patience);
    }

    [Fact]
    public async Task Ladle_Opened_ShowsEveryCautionAndNoWayToSwitchOneOff()
    {
        var cautions = Open(await Prepared()).Find("[data-testid=ladle-cautions]");

        Assert.Equal(
            ["Flare", "Damp", "Hoist", "Freeboard", "Fire", "PouredBack", "Carbide", "Decides"],
            cautions.QuerySelectorAll("[data-caution]").Select(caution => caution.GetAttribute("data-caution")));
        Assert.Empty(cautions.QuerySelectorAll("input, button, summary"));
    }

    [Fact]
    public async Task ReactionEnded_PressedOnce_StartsTheClockFromTheServersInstants()
    {
        var id = await Prepared();
        await Tap(id, 790);
        var page = Open(id);
        page.Find("[data-testid=reaction-ended]").Click();
        page.WaitForState(() => page.FindAll("[data-ladle-state=Pouring]").Count > 0, Patience);

        var clock = page.Find("ladle-clock");
        var view = await Treated(id);
        Assert.Equal(Milliseconds(view.Treated!.ReactionEndedAt!.Value), clock.GetAttribute("data-end"));
        var first = Operations.Ladles.PouringLimits.Of(view.Pouring!.Times)[0];
        Assert.Equal(Milliseconds(first.StopAt), clock.GetAttribute("data-stop"));
        Assert.Equal(first.Kind.ToString(), page.Find("[data-testid=stop-at]").GetAttribute("data-first"));
    }

    [Fact]
    public async Task Release_WithoutLastMetalSample_IsNotOffered()
    {
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        var page = Open(id, Role.Inspector);

        Assert.True(page.Find("[data-testid=release]").HasAttribute("disabled"));
        Assert.Contains("nothing can be released", page.Find("[data-testid=decision]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Release_InsideTheWindow_AsksOnceMoreAndIsRecorded()
    {
        var id = await Poured(0.042);
        var page = Open(id, Role.Inspector);
        page.Find("[data-testid=release]").Click();
        Assert.Contains("all inside the poured window", page.Find(".ask").TextContent, StringComparison.Ordinal);
        page.Find("[data-testid=release-yes]").Click();
        page.WaitForState(() => page.FindAll("[data-code='password.missing']").Count > 0, Patience);
        Assert.Empty((await Treated(id)).Treated!.Decisions);

        page.Find("[data-field=password] input").Change(Password);
        page.Find("[data-testid=release-yes]").Click();
        page.WaitForState(() => page.FindAll("[data-ladle-state=Released]").Count > 0, Patience);

        Assert.Equal(CastingVerdict.Release, (await Treated(id)).Treated!.Decision!.Verdict);
        Assert.NotNull(page.Find("[data-testid=signed]"));
        Assert.Contains("all inside its window", page.Find("[data-testid=seen]").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[data-testid=rest], [data-testid=mould-form], [data-testid=inoculation-form]"));
    }

    [Fact]
    public async Task Release_AskedBeforeALaterSample_IsRefusedAndNothingIsReleasedOnASampleThatNobodySaw()
    {
        var id = await Poured(0.042);
        var page = Open(id, Role.Inspector);
        page.Find("[data-testid=decision] [data-field=reason] input").Change("checked");
        page.Find("[data-testid=release]").Click();
        page.Find("[data-field=password] input").Change(Password);
        await LastMetal(id, 0.010);
        page.WaitForAssertion(() => Assert.Contains("Seen now: outside the poured window: Mg", page.Find("[data-testid=release-outdated]").TextContent, StringComparison.Ordinal));
        Assert.Contains("Seen: all inside the poured window", page.Find("[data-testid=release-ask]").TextContent, StringComparison.Ordinal);
        page.Find("[data-testid=release-yes]").Click();

        page.WaitForState(() => page.FindAll("[data-testid=decision] [data-testid=findings]").Count > 0);
        Assert.Empty((await Treated(id)).Treated!.Decisions);
        Assert.Empty(page.FindAll("[data-testid=release-ask]"));
        Assert.Equal("checked", page.Find("[data-testid=decision] [data-field=reason] input").GetAttribute("value"));
        page.Find("[data-testid=release]").Click();
        Assert.Contains("Seen: outside the poured window: Mg", page.Find("[data-testid=release-ask]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hold_PressedOnceMoreOnTheFormerDrawing_IsDecidedOnce()
    {
        var id = await Poured(0.042);
        var page = Open(id, Role.Melter);
        var former = page.FindAll("[data-testid=hold]").Single();
        await former.ClickAsync();
        page.WaitForState(() => page.FindAll("[data-verdict=Hold]").Count > 0);

        await Assert.ThrowsAsync<Bunit.Rendering.UnknownEventHandlerIdException>(() => former.ClickAsync()); // a browser has it said, and it is known to be the same press
        Assert.Single((await Treated(id)).Treated!.Decisions);
        Assert.Empty(page.FindAll("[data-testid=decision] [data-testid=findings]"));
    }

    [Theory]
    [InlineData(Role.Administrator, 0, 0)]
    [InlineData(Role.Supervisor, 1, 0)]
    [InlineData(Role.Melter, 1, 0)]
    [InlineData(Role.Inspector, 1, 1)]
    public async Task Decision_ByRole_OffersOnlyWhatThePersonMayDecide(string role, int holds, int releases)
    {
        var page = Open(await Poured(0.042), role);

        Assert.Equal(holds, page.FindAll("[data-testid=hold]").Count);
        Assert.Equal(releases, page.FindAll("[data-testid=release]").Count);
        Assert.Equal(releases, page.FindAll("[data-testid=scrap]").Count);
        Assert.Equal(holds, page.FindAll("[data-testid=decision] [data-field=reason]").Count);
    }

    [Fact]
    public async Task Ladle_Poured_SaysItsFiguresInPercentAndShowsMagnesiumFirstInTheGrid()
    {
        var page = Open(await Poured(0.042));

        Assert.Equal("0.040\u00a0%, floor 0.035\u00a0%", page.Find("[data-testid=card-magnesium]").TextContent);
        Assert.Contains("%", page.FindAll("[data-testid=mg-curve] text").Select(word => word.TextContent).Single(word => word.StartsWith("floor", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Equal("0.Mg", page.Find("[data-testid=last-metal-form] [data-cell]").GetAttribute("data-cell"));
    }

    [Fact]
    public async Task Release_MagnesiumUnderItsFloorByAMetallurgist_IsRefusedAndStaysHeld()
    {
        var id = await Poured(0.020);
        var page = Open(id, Role.Metallurgist);
        page.Find("[data-testid=release]").Click();
        Assert.Contains("Mg", page.Find(".ask").TextContent, StringComparison.Ordinal);
        page.Find("[data-testid=release-yes]").Click();
        page.WaitForState(() => page.FindAll("[data-testid=decision] [data-testid=findings]").Count > 0, Patience);

        Assert.Equal(TreatedLadleState.Held, (await Treated(id)).Treated!.State);
        Assert.Empty((await Treated(id)).Treated!.Decisions);
    }

    /// <summary>Who releases sees what measured the coin, how it stood at its last check, and how certain a mean is.</summary>
    [Fact]
    public async Task LastMetal_MeasuredByAnInstrument_ShowsItsCheckAndItsGuardBand()
    {
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        var least = (await Treated(id)).Treated!.Card!.MgFloorPercent!.Value;
        var spark = (await The<AddInstrument>().Run(Founder, new(
            Guid.NewGuid(), Now, "spark-9", "Spark, hall 9", InstrumentKind.Spark, false, [new("Mg", 0.001, 2)], "invented for a test"), Cancellation)).Value;
        await The<RecordSample>().Run(Founder, new(
            Guid.NewGuid(), Now, HeatId, id, SampleKind.LastMetal, [[new("Mg", least + 0.001, false, "0.0")]], InstrumentId: spark), Cancellation);
        var page = Open(id, Role.Metallurgist);

        var card = page.Find("[data-testid=last-metal]");
        Assert.StartsWith("Spark, hall 9", card.QuerySelector("[data-testid=last-metal-source]")!.TextContent.Trim(), StringComparison.Ordinal);
        Assert.NotNull(card.QuerySelector("[data-check=none]"));
        Assert.Equal("close", card.QuerySelector("[data-quantity=Mg]")!.GetAttribute("data-verdict"));
        Assert.Equal("repeatability 0.001\u00a0%", card.QuerySelector("[data-quantity=Mg] [data-testid=repeatability]")!.TextContent);
        Assert.Contains("1.0 × repeatability", card.QuerySelector("[data-quantity=Mg] [data-testid=distance]")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Coin_OfTheLadleThatIsOnItsWay_WaitsThereUntilItsResultIsEntered()
    {
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        var page = Open(id);
        await page.InvokeAsync(() => page.Find("[data-testid=send-coin]").Click());
        page.WaitForElement("[data-testid=coin-form]", Patience);
        page.Find("[data-testid=coin-form] [data-field=coinNumber] input").Change("21");
        await page.Find("[data-testid=coin-form]").SubmitAsync();
        var coin = page.WaitForElement("[data-coin=\"21\"]", Patience);
        var taken = Assert.Single((await Treated(id)).Coins).Origin.ObservedAt;

        await page.InvokeAsync(() => coin.QuerySelectorAll("button").Single(button => button.TextContent == "Result of coin 21").Click());
        page.WaitForState(() => page.Find("[data-testid=last-metal-form] [data-field=coinNumber] input").GetAttribute("value") == "21", Patience);
        page.Find("[data-testid=last-metal-form] [data-cell='0.Mg']").Change("0.041");
        await page.Find("[data-testid=last-metal-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-coin]").Count == 0, Patience);

        var sample = Assert.Single((await Treated(id)).Samples);
        Assert.Equal((SampleKind.LastMetal, "21", taken), (sample.Kind, sample.CoinNumber, sample.Origin.ObservedAt));
    }

    /// <summary>A form of another program, or of a page that was open since before: what is no sample of a ladle must not hold it as its last metal.</summary>
    [Fact]
    public async Task Sample_OfAKindThatNoLadleHas_IsRefusedAndHoldsNothing()
    {
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        var entry = new SampleEntry([]);
        entry.Belongs("heatId", HeatId);
        entry.Belongs("treatedLadleId", id);
        entry.Fill(new Dictionary<string, string> { ["kind"] = "Cup", ["burns[0].Mg"] = "0.04" });
        var answer = await entry.HandIn(Services, new(Founder, Guid.NewGuid(), Now));

        Assert.Equal(("kind", "sample.otherOfLadle"), (Assert.Single(answer.Findings).Path, answer.Findings[0].Code));
        Assert.Equal(TreatedLadleState.Pouring, (await Treated(id)).Treated!.State);
    }

    private static string Milliseconds(DateTimeOffset at) => at.ToUnixTimeMilliseconds().ToString(System.Globalization.CultureInfo.InvariantCulture);

    private async Task<long> Poured(double magnesium)
    {
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        await LastMetal(id, magnesium);
        return id;
    }

    private IRenderedComponent<LadleDetail> Open(long id, string role = Role.Melter)
    {
        SignIn(role);
        var page = Render<LadleDetail>(parameters => parameters.Add(p => p.Id, id));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }
}

using System.Globalization;
using Bunit;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Ladles;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>What a melter sees and presses between the end of the reaction and the last mould; figures of the test's own, no source.</summary>
public sealed class PouringTests : LadleTest
{
    [Fact]
    public async Task Mould_TickedOffAndTheNextWithOnePress_IsListedWithItsMinutes()
    {
        var id = await Pouring();
        var page = Open(id);
        Type(page, "mould-form", "kg", "85");
        Type(page, "mould-form", "pourSeconds", "18");
        await page.InvokeAsync(() => page.Find("[data-testid=mould-form]").Submit());
        page.WaitForState(() => page.FindAll("[data-mould='1']").Count > 0, Patience);

        Assert.Equal("2", page.Find("[data-testid=mould-form] [data-field=label] input").GetAttribute("value"));
        Assert.Equal("85", page.Find("[data-testid=mould-form] [data-field=kg] input").GetAttribute("value"));
        await page.InvokeAsync(() => page.Find("[data-testid=mould-form]").Submit());
        page.WaitForState(() => page.FindAll("[data-mould='2']").Count > 0, Patience);

        Assert.Contains("620\u00a0kg", page.Find("[data-testid=left-kg]").TextContent, StringComparison.Ordinal); // 790 tapped
        Assert.Empty(page.FindAll("[data-testid=held-mould]"));
        Assert.Equal(62, page.Find("[data-testid=mg-curve-band]").GetAttribute("points")!.Split(' ').Length); // minutes 0 to 30, there and back
    }

    [Fact]
    public async Task Mould_TakenBackWithoutAReason_IsRefusedAndWithOneStaysReadable()
    {
        var id = await Pouring();
        await Mould(id, "1", Now);
        var page = Open(id);
        await page.InvokeAsync(() => page.Find("[data-testid=take-back]").Click());
        await page.InvokeAsync(() => page.Find("[data-testid=take-back-form]").Submit());
        Assert.NotNull(page.Find("[data-testid=take-back-form] .field-error"));

        Type(page, "take-back-form", "reason", "wrong ladle");
        await page.InvokeAsync(() => page.Find("[data-testid=take-back-form]").Submit());
        page.WaitForState(() => page.FindAll("[data-mould] s").Count > 0, Patience);

        Assert.Contains("wrong ladle", page.Find("[data-mould='1']").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Board_NobodyPressed_CountsFromTheTapAndSaysSo()
    {
        var id = await Prepared();
        await Tap(id, 790);
        var page = Open(id);

        Assert.Contains("not pressed", page.Find("[data-limit=Magnesium] [data-testid=assumed]").TextContent, StringComparison.Ordinal);
        Assert.Equal("since the start of the tap", page.Find("ladle-clock").GetAttribute("data-since"));
        Assert.NotNull(page.Find("[data-testid=mould-form]"));
        Assert.Empty(page.FindAll("[data-testid=reaction-form] input")); // one press alone
        await EndReaction(id);
        page.WaitForState(() => page.FindAll("[data-testid=undo-reaction]").Count > 0, Patience);
        Assert.Empty(page.FindAll("[data-limit=Magnesium] [data-testid=assumed]"));

        await page.InvokeAsync(() => page.Find("[data-testid=undo-reaction]").Click());
        Type(page, "undo-reaction-form", "reason", "flare came again");
        await page.InvokeAsync(() => page.Find("[data-testid=undo-reaction-form]").Submit());
        page.WaitForState(() => page.FindAll("[data-testid=reaction-ended]").Count > 0, Patience);
        Assert.Null((await Treated(id)).Treated!.ReactionEndedAt);
    }

    [Fact]
    public async Task Mould_ThatAClockPutRightMakesLate_IsShownAsHeld()
    {
        var id = await Prepared();
        Assert.True((await The<RecordTap>().Run(
            Founder, new(Guid.NewGuid(), Now, id, (await Treated(id)).Treated!.Version, 790, null, TapSeconds: 3000), Cancellation)).Succeeded);
        await EndReaction(id);
        await Mould(id, "1", Now);
        var page = Open(id);
        Assert.Empty(page.FindAll("[data-testid=held-mould]"));

        Assert.True((await The<UndoReaction>().Run(
            Founder, new(Guid.NewGuid(), Now, id, (await Treated(id)).Treated!.Version, "it never flared"), Cancellation)).Succeeded);

        page.WaitForState(() => page.FindAll("[data-testid=reaction-form] [data-field=observedAt] input").Count > 0, Patience); // before the first mould
        page.WaitForState(() => page.FindAll("[data-testid=held-mould]").Count > 0, Patience); // fifty minutes after the start of the tap
        Assert.Contains("magnesium limit", page.Find("[data-testid=held-mould]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task OverTheStopWeight_Tapped_SaysWhatNowAndNeverAlloyInThePocket()
    {
        var id = await Prepared();
        await Tap(id, (await Treated(id)).Treated!.Card!.StopWeightKg + 20);
        var card = Open(id).Find("[data-testid=over-stop-card]");

        Assert.Equal(["pour", "pig"], card.QuerySelectorAll("[data-choice]").Select(choice => choice.GetAttribute("data-choice")));
        Assert.Contains("no wire", card.TextContent, StringComparison.Ordinal);
        Assert.Contains("Never add alloy", card.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task LowMagnesium_CameBack_HoldsWhatWasPouredAndGivesChoicesWithMasses()
    {
        var id = await Pouring();
        await Mould(id, "7", Now);
        var page = Open(id);
        await Sample(id, 0.021);
        page.WaitForState(() => page.FindAll("[data-testid=low-magnesium]").Count > 0, Patience);
        var card = page.Find("[data-testid=low-magnesium]");

        Assert.Contains("690\u00a0kg", card.QuerySelector("[data-choice=pig]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("7", card.QuerySelector("[data-testid=low-held]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("floor", page.Find("[data-mould='7'] [data-testid=held-mould]").TextContent, StringComparison.Ordinal);

        await Mould(id, "8", Now); // poured in spite of it
        page.WaitForState(() => page.FindAll("[data-mould='8'] [data-testid=held-mould]").Count > 0, Patience);
        Assert.Contains("after the magnesium limit", page.Find("[data-mould='8']").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Rest_EachWay_StandsWithItsOwnCaution()
    {
        var page = Open(await Pouring());
        Assert.Contains("dry and warm", page.Find("[data-testid=rest-form] .caution").TextContent, StringComparison.Ordinal);
        await page.InvokeAsync(() => page.Find("[data-testid=rest-form] [data-field=way] select").Change(nameof(RestWay.PouredBack)));
        Assert.Contains("flares", page.Find("[data-testid=rest-form] .caution").TextContent, StringComparison.Ordinal);

        Type(page, "rest-form", "kg", "120");
        await page.InvokeAsync(() => page.Find("[data-testid=rest-form] [data-field=heatId] select").Change(HeatId.ToString(CultureInfo.InvariantCulture)));
        await page.InvokeAsync(() => page.Find("[data-testid=rest-form]").Submit());
        page.WaitForState(() => page.Find("[data-testid=rest]").TextContent.Contains("120\u00a0kg", StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task TwoTablets_AtOneLadle_BothSeeTheMouldsOfBoth()
    {
        var id = await Pouring();
        var (mine, theirs) = (Open(id), Open(id));
        await Mould(id, "A", Now);
        await Mould(id, "B", Now);

        mine.WaitForState(() => mine.FindAll("[data-mould]").Count == 2, Patience);
        theirs.WaitForState(() => theirs.FindAll("[data-mould]").Count == 2, Patience);
    }

    private async Task<long> Pouring()
    {
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        return id;
    }

    private async Task Mould(long id, string label, DateTimeOffset at) =>
        Assert.True((await The<RecordMould>().Run(Founder, new(Guid.NewGuid(), at, id, label, 100, 20), Cancellation)).Succeeded);

    private async Task Sample(long id, double magnesium) => Assert.True((await The<RecordSample>().Run(Founder, new(
        Guid.NewGuid(), Now, HeatId, id, SampleKind.AfterTreatment,
        [[new ReadingInput("Mg", magnesium, false, magnesium.ToString(CultureInfo.InvariantCulture))]]), Cancellation)).Succeeded);

    private IRenderedComponent<LadleDetail> Open(long id, string role = Role.Melter)
    {
        SignIn(role);
        var page = Render<LadleDetail>(parameters => parameters.Add(p => p.Id, id));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }

    private static void Type(IRenderedComponent<LadleDetail> page, string form, string path, string text) =>
        page.Find($"[data-testid={form}] [data-field={path}] input").Change(text);
}

using Bunit;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;

namespace MeltShop.Web.Tests.Pages.Heats;

public sealed class EndTests : HeatTest
{
    [Fact]
    public async Task Heat_Closed_LeavesItsHeel()
    {
        await WeighAll();
        await GoodSample();
        var page = Open();
        Assert.DoesNotContain("of whatever heat", page.Markup, StringComparison.Ordinal);
        Press(page, "Close the heat");
        Type(page, "close-form", "piggedKg", "1500");
        Assert.Matches("[45][0-9]{2}\u00a0kg stay as the heel", page.Find("[data-testid=heel-left]").TextContent);
        Assert.Empty(page.FindAll("[data-testid=heel-carbon]"));
        await page.Find("[data-testid=close-form]").SubmitAsync();

        page.WaitForAssertion(() => Assert.Equal("Closed", page.Find("[data-testid=steps]").GetAttribute("data-state")), Patience);
        Assert.Equal(HeatState.Closed, (await Heat()).Heat.State);
        Assert.Empty(page.FindAll("[data-testid=end]"));
        foreach (var figure in new[] { "figures", "metal" }) Assert.Contains("n the furnace now, of whatever heat", page.Find($"[data-testid={figure}]").TextContent, StringComparison.Ordinal); // soon the next one's
    }

    [Fact]
    public async Task Heat_WhoseOnlyCoinFrozeGrey_SaysThatTheHeelsCarbonIsNotKnown()
    {
        await WeighAll();
        await The<RecordSample>().Run(Founder, new(
            Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[new("C", 3.2, false, "3.2"), new("Si", 1.5, false, "1.5")]], GreyFracture: true), Cancellation);
        var page = Open();
        Press(page, "Close the heat");
        Type(page, "close-form", "piggedKg", "1500");

        Assert.Contains("not known", page.WaitForElement("[data-testid=heel-carbon]", Patience).TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Heat_ClosedWithoutABathSample_IsRefusedWithTheReason()
    {
        await WeighAll();
        var page = Open();
        Press(page, "Close the heat");
        Type(page, "close-form", "piggedKg", "0");
        await page.Find("[data-testid=close-form]").SubmitAsync();

        page.WaitForAssertion(() => Assert.Equal("heat.noBathSample", page.Find("[data-testid=findings] li").GetAttribute("data-code")), Patience);
        Assert.Equal("0", Field(page, "close-form", "piggedKg").QuerySelector("input")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Heat_ChangedMeanwhile_IsToldAndClosedKnowinglyThen()
    {
        await WeighAll();
        var page = Open();
        Press(page, "Close the heat");
        Type(page, "close-form", "piggedKg", "0");
        await GoodSample();
        await page.Find("[data-testid=close-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Equal("version.stale", page.Find("[data-testid=findings] li").GetAttribute("data-code")), Patience);
        Assert.Equal("0", Field(page, "close-form", "piggedKg").QuerySelector("input")!.GetAttribute("value"));

        page.WaitForAssertion(() => Assert.Equal("Bath", page.Find("[data-testid=steps]").GetAttribute("data-state")), Patience);
        await page.Find("[data-testid=close-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Equal("Closed", page.Find("[data-testid=steps]").GetAttribute("data-state")), Patience);
    }

    [Fact]
    public async Task Heat_CalledOff_NeedsAReasonAndKeepsItsNumber()
    {
        var page = Open(Role.Supervisor);
        Press(page, "Call the heat off");
        await page.Find("[data-testid=cancel-form]").SubmitAsync();
        Assert.Equal("text.missing", Error(page, "cancel-form", "reason"));
        Type(page, "cancel-form", "reason", "pattern broken");
        await page.Find("[data-testid=cancel-form]").SubmitAsync();

        page.WaitForAssertion(() => Assert.Equal("Cancelled", page.Find("[data-testid=steps]").GetAttribute("data-state")), Patience);
        Assert.Equal(page.Find("[data-testid=heat-number]").TextContent, (await Heat()).Heat.Number);
    }

    [Fact]
    public void Heat_ReadByAMelter_CannotBeCalledOff() =>
        Assert.DoesNotContain(Open().FindAll("button"), button => button.TextContent == "Call the heat off");
}

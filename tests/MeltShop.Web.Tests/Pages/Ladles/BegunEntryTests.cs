using Bunit;
using MeltShop.Operations.Ladles;
using MeltShop.Records.People;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Pages.Ladles;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>Several people enter at one ladle; figures of the test's own, no source.</summary>
public sealed class BegunEntryTests : LadleTest
{
    [Fact]
    public async Task Mould_TypedWhileAnotherIsTickedOff_StaysAsItWasTyped()
    {
        var (id, page) = await Pouring();
        Field(page, "mould-form", "label").Change("P-77");
        await Mould(id, "Q-5");
        page.WaitForState(() => page.FindAll("[data-mould='Q-5']").Count > 0, Patience);

        Assert.Equal("P-77", Shown(page, "mould-form", "label"));
        Assert.Equal("", Shown(page, "mould-form", "kg"));
    }

    [Fact]
    public async Task Mould_OfferedWhileAnotherIsTickedOff_FollowsTheRecord()
    {
        var (id, page) = await Pouring();
        Assert.Equal("1", Shown(page, "mould-form", "label"));
        await Mould(id, "16");
        page.WaitForState(() => page.FindAll("[data-mould='16']").Count > 0, Patience);

        Assert.Equal("17", Shown(page, "mould-form", "label"));
        Assert.Equal("100", Shown(page, "mould-form", "kg"));
        Assert.Empty(page.FindAll("[data-testid=mould-kept]"));
    }

    /// <summary>Over a slow way the record says it before the answer does, and the form offers the next by then.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Mould_InTheRecordBeforeItsAnswer_IsSaidAsItWasHandedIn(bool isLate)
    {
        var (id, page) = await Pouring();
        await Mould(id, "1");
        page.WaitForState(() => page.FindAll("[data-mould='1']").Count > 0, Patience);
        var handed = new Dictionary<string, string> { ["label"] = "1", ["kg"] = "100", ["pourSeconds"] = "20" };
        await page.Find("[data-testid=mould-form]").TriggerEventAsync("onentryanswered", isLate ? new EntryAnsweredEventArgs { Late = handed } : new() { Handed = handed });

        Assert.Equal("✓ Mould 1 recorded", page.Find("[data-testid=mould-kept]").TextContent.Trim());
        Assert.Equal("2", Shown(page, "mould-form", "label"));
        Assert.Equal("1", page.Find("[data-testid=mould-form] [data-kept]").GetAttribute("data-kept")); // entry/next.js takes no press for a moment from here on
    }

    [Fact]
    public async Task Mould_AcceptedLateWhileTheNextIsTyped_IsSaidAndTheNextStays()
    {
        var (_, page) = await Pouring();
        Field(page, "mould-form", "label").Change("P-81");
        await page.Find("[data-testid=mould-form]").TriggerEventAsync(
            "onentryanswered", new EntryAnsweredEventArgs { Late = new Dictionary<string, string> { ["label"] = "P-80" }, IsTouched = true });

        Assert.Equal("✓ Mould P-80 recorded", page.Find("[data-testid=mould-kept]").TextContent.Trim());
        Assert.Equal("P-81", Shown(page, "mould-form", "label"));
    }

    private async Task<(long Id, IRenderedComponent<LadleDetail> Page)> Pouring()
    {
        var id = await Prepared();
        await Tap(id, 790);
        await EndReaction(id);
        SignIn(Role.Melter);
        var page = Render<LadleDetail>(parameters => parameters.Add(p => p.Id, id));
        page.WaitForState(() => page.FindAll("[data-testid=mould-form]").Count > 0, Patience);
        return (id, page);
    }

    private async Task Mould(long id, string label) =>
        Assert.True((await The<RecordMould>().Run(Founder, new(Guid.NewGuid(), Now, id, label, 100, 20), Cancellation)).Succeeded);

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<LadleDetail> page, string form, string path) => page.Find($"[data-testid={form}] [data-field={path}] input");

    private static string Shown(IRenderedComponent<LadleDetail> page, string form, string path) => Field(page, form, path).GetAttribute("value") ?? "";
}

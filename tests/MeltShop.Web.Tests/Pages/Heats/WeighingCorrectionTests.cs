using Bunit;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Web.Tests.Pages.Heats;

/// <summary>The lot of a weighing is put right on the page of its heat.</summary>
public sealed class WeighingCorrectionTests : HeatTest
{
    [Fact]
    public async Task Lot_OfAWeighing_IsCorrectedWithAReasonAndTheWrongOneStaysReadable()
    {
        var (code, id) = MaterialIds.First();
        Assert.True((await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now, id, StockKind.Received, 500) { Lot = "B 3" }, Cancellation)).Succeeded);
        await The<WeighIn>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, id, 120, false) { Lot = "A 17" }, Cancellation);
        var page = Open();
        Assert.Contains("lot A 17", page.Find("[data-testid=timeline] [data-kind=Weighing]").TextContent, StringComparison.Ordinal);
        page.Find("[data-testid=timeline] [data-kind=Weighing] .timeline-side button").Click();
        Assert.Equal("A 17", Field(page, "fact-correction", "lot").QuerySelector("input")!.GetAttribute("value"));
        Type(page, "fact-correction", "lot", "B 3");
        page.Find("[data-testid=fact-correction]").Submit();
        Assert.Equal("text.missing", Error(page, "fact-correction", "reason"));

        Type(page, "fact-correction", "reason", "read from the wrong bag");
        page.Find("[data-testid=fact-correction]").Submit();

        page.WaitForState(() => page.FindAll("[data-testid=earlier]").Count > 0, Patience);
        var weighing = page.Find("[data-testid=timeline] [data-kind=Weighing]").TextContent;
        Assert.Contains("lot B 3", weighing, StringComparison.Ordinal);
        Assert.Contains("lot A 17", page.Find("[data-testid=earlier]").TextContent, StringComparison.Ordinal);
        Assert.Equal(["A 17", "B 3"], (await Heat()).Weighings.Select(w => w.Lot));
        Assert.Equal(code, (await Heat()).Weighings[^1].MaterialCode);
    }
}

using Bunit;
using MeltShop.Operations.Correcting;
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

    [Fact]
    public async Task Correction_InHandWhenAnotherCorrectsTheSameFact_StaysIsToldAndCorrectsThatOne()
    {
        await WeighIn("steel", 120);
        var page = Open();
        page.Find("[data-testid=timeline] [data-kind=Weighing] .timeline-side button").Click();
        Type(page, "fact-correction", "kg", "130");
        Type(page, "fact-correction", "reason", "read again");
        var wrong = Assert.Single((await Heat()).Weighings);
        Assert.True((await The<CorrectWeighing>().Run(Founder, new(Guid.NewGuid(), Now, wrong.Origin.FactId, HeatId, wrong.MaterialId, 125, false, "slipped"), Cancellation)).Succeeded);
        page.WaitForState(() => page.FindAll("[data-testid=earlier]").Count > 0);
        Assert.Equal("read again", Field(page, "fact-correction", "reason").QuerySelector("input")!.GetAttribute("value"));

        page.Find("[data-testid=fact-correction]").Submit();
        page.WaitForState(() => page.FindAll("[data-testid=fact-correction] [data-code='fact.corrected']").Count > 0);
        Assert.Equal("130", Field(page, "fact-correction", "kg").QuerySelector("input")!.GetAttribute("value"));
        page.Find("[data-testid=fact-correction]").Submit();

        page.WaitForState(() => page.FindAll("[data-testid=fact-correction]").Count == 0);
        Assert.Equal([120, 125, 130], (await Heat()).Weighings.Select(w => w.Kg));
    }
}

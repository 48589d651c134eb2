using Bunit;

namespace MeltShop.Web.Tests.Pages.Heats;

public sealed class OutdatedHeatTests : HeatTest
{
    [Fact]
    public async Task Heat_SampledWhileItWasBeingClosed_SaysWhatWasDoneMeanwhile()
    {
        await WeighAll();
        var page = Open();
        Press(page, "Close the heat");
        Type(page, "close-form", "piggedKg", "12");
        await GoodSample();
        await page.Find("[data-testid=close-form]").SubmitAsync();

        var told = page.WaitForElement("[data-testid=close-form] [data-testid=what-changed]", Patience);
        Assert.Matches($"{Founder.PersonName}, .+: entered a sample", told.TextContent);
        Assert.Equal("state: charging → bath", told.QuerySelector("[data-column=State]")!.TextContent);
        Assert.Equal("12", Field(page, "close-form", "piggedKg").QuerySelector("input")!.GetAttribute("value"));
    }
}

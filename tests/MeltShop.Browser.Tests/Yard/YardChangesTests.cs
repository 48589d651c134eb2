using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Yard;

/// <summary>What a metallurgist changes in the yard of the demo foundry stays changed.</summary>
[Collection<DemoAppCollection>]
public sealed class YardChangesTests(Chromium chromium, RunningApp app)
{
    [Fact]
    public async Task Price_Changed_StandsOnThePageAfterAReload()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await MaterialAsync(context);
        await page.OpenFormAsync("button:has-text('Change the price')", "[data-testid=price-form]");
        await page.FillAsync("[data-testid=price-form] input", "-12,5");
        await page.PressUntilGoneAsync("[data-testid=price-form] button[type=submit]", "[data-testid=price-form]");

        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("[data-testid=price]")).ToContainTextAsync("\u221212.50");
    }

    [Fact]
    public async Task Analysis_Corrected_StandsOnThePageWithItsReasonAfterAReload()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await MaterialAsync(context);
        await page.PressUntilAsync("section.analysis button.press", "[data-testid=analysis-form]");
        await page.FillAsync("[data-testid=analysis-form] [data-row=Mn] [data-field$='.percent'] input", "0,777");
        await page.FillAsync("[data-testid=analysis-form] [data-field=reason] input", "certificate of the last delivery");
        await page.PressUntilGoneAsync("[data-testid=analysis-form] button[type=submit]", "[data-testid=analysis-form]");

        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("[data-testid=analysis] tr", new() { HasText = "Mn" })).ToContainTextAsync("0.777");
        await Assertions.Expect(page.Locator("section.analysis")).ToContainTextAsync("certificate of the last delivery");
    }

    private static async Task<IPage> MaterialAsync(IBrowserContext context)
    {
        var page = await context.SignInAsync("henning");
        await page.OpenAsync("/yard");
        await page.PressUntilAsync("[data-material=plate-offcuts] a", "[data-testid=analysis]");
        return page;
    }
}

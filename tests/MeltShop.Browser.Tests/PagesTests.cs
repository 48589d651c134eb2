using Microsoft.Playwright;
using MeltShop.Browser.Tests.Running;

[assembly: AssemblyFixture(typeof(MeltShop.Browser.Tests.Running.Chromium))]

namespace MeltShop.Browser.Tests;

/// <summary>What the demo foundry holds, in a program of its own.</summary>
public sealed class PagesTests(Chromium chromium, RunningApp app) : IClassFixture<RunningApp>
{
    [Fact]
    public async Task Yard_OfTheDemo_HoldsAtLeast25MaterialsWithTheirSources()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("tilda");
        await page.OpenAsync("/yard");

        var materials = await page.Locator("[data-material]").CountAsync();
        Assert.True(materials >= 25, $"{materials} materials");
        await Assertions.Expect(page.Locator("[data-material] [data-source]")).ToHaveCountAsync(materials);
    }

    [Fact]
    public async Task History_AfterAPowerCut_StillHoldsTheHeat()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("ruta");
        await page.OpenAsync("/history");
        await Assertions.Expect(page.Locator("tr[data-heat]")).ToHaveCountAsync(1);

        await page.GotoAsync("about:blank"); // a page that lost its program loads itself anew once that is back, over whatever is opened then
        await app.KillAsync();
        await app.StartAsync();
        await page.OpenAsync("/history");
        await page.ClickAsync("tr[data-heat] a");
        await page.WaitForSelectorAsync("[data-testid=heat-number]");
    }
}

using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(MeltShop.Browser.Tests.Running.Chromium))]

namespace MeltShop.Browser.Tests;

/// <summary>Every page of the demo foundry, on a tablet and at a desk.</summary>
public sealed class PagesTests(Chromium chromium) : IAsyncLifetime
{
    private readonly RunningApp app = new();

    public async ValueTask InitializeAsync() => await app.StartAsync();

    public ValueTask DisposeAsync() => app.DisposeAsync();

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Pages_OfTheDemo_OpenWithoutErrorsAndStrangers(bool onTablet)
    {
        await using var context = onTablet ? await chromium.TabletAsync(app.Address) : await chromium.DeskAsync(app.Address);
        var page = await context.SignInAsync("henning");
        var faults = new List<string>();
        page.Console += (_, message) => { if (message.Type == "error") faults.Add($"{page.Url}: {message.Text}"); };
        page.PageError += (_, error) => faults.Add($"{page.Url}: {error}");
        page.Request += (_, request) => { if (new Uri(request.Url) is { Scheme: "http" or "https" } address && address.Host != app.Address.Host) faults.Add(request.Url); };

        foreach (var path in Places.All)
        {
            await page.VisitAsync(path);
            Assert.True(await page.Locator("h1, [data-state=missing]").First.IsVisibleAsync(), path);
        }

        Assert.Empty(faults);
    }

    [Fact]
    public async Task Yard_OfTheDemo_HoldsAtLeast25MaterialsWithTheirSources()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("tilda");
        await page.OpenAsync("/yard");

        var materials = await page.Locator("[data-material]").CountAsync();
        Assert.True(materials >= 25, $"{materials} materials");
        Assert.Equal(materials, await page.Locator("[data-material] [data-source]").CountAsync());
    }

    [Fact]
    public async Task History_AfterAPowerCut_StillHoldsTheHeat()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("ruta");
        await page.OpenAsync("/history");
        Assert.Equal(1, await page.Locator("tr[data-heat]").CountAsync());

        await app.KillAsync();
        await app.StartAsync();
        await page.OpenAsync("/history");
        await page.ClickAsync("tr[data-heat] a");
        await page.WaitForSelectorAsync("[data-testid=heat-number]");
    }
}

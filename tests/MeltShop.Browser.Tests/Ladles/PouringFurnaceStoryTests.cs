using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Ladles;

/// <summary>
/// A pouring furnace on a tablet, with a program of its own: filled from one ladle, a mould ticked off, topped up from a second ladle and
/// another mould; then that ladle's last metal comes back low.
/// </summary>
public sealed class PouringFurnaceStoryTests(RunningApp app, Chromium chromium) : IClassFixture<RunningApp>
{
    [Fact]
    public async Task PouringFurnace_ToppedUpFromALadleThatComesBackLow_HoldsWhatWasPouredWithItsIron()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        await AddFurnaceAsync(page);
        var heat = await page.SampledHeatAsync();

        await page.PrepareLadleAsync(heat);
        await page.TapAndReactAsync("790");
        await OverAsync(page, "IntoEmpty", "vesselId", "600");
        var bath = await NewestAsync();
        await page.OpenAsync($"/ladles/{bath}");
        await page.MouldAsync("1", "150");

        await page.PrepareLadleAsync(heat);
        var second = page.Url.Split('/')[^1];
        await page.TapAndReactAsync("790");
        await OverAsync(page, "IntoLadle", "intoLadleId", "500");
        await page.OpenAsync($"/ladles/{bath}");
        await Assertions.Expect(page.Locator("[data-came]")).ToHaveCountAsync(2);
        await Assertions.Expect(page.Locator("[data-testid=came-band]").First).ToBeVisibleAsync();
        await page.MouldAsync("2", "150");

        await page.OpenAsync($"/ladles/{second}");
        await page.LastMetalAsync("0.021");
        await page.OpenAsync($"/ladles/{bath}");
        await Assertions.Expect(page.Locator($"[data-low-source='{second}']")).ToContainTextAsync("came back low");
        await Assertions.Expect(page.Locator("[data-testid=low-source-held]")).ToHaveTextAsync("Held, poured already: 2");
        await Assertions.Expect(page.Locator("[data-mould='2'] [data-testid=held-mould]")).ToContainTextAsync("iron of ladle");
        await Assertions.Expect(page.Locator("[data-mould='1'] [data-testid=held-mould]")).ToHaveCountAsync(0);
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));

        await page.LastMetalAsync("0.042"); // the mixture's own last metal is good, and does not speak for what came in low
        await page.PressUntilAsync("[data-testid=release]", "[data-testid=release-yes]");
        await page.EnterAsync("[data-testid=decision] [data-field=password] input", Demo.Password);
        await page.PressUntilAsync("[data-testid=release-yes]", "[data-testid=decision]:has-text('whose sample read 0.021 %')");
        Assert.Empty(await app.ReadAsync($"SELECT 1 FROM CastingDecisions WHERE TreatedLadleId = {bath}"));
    }

    private static async Task AddFurnaceAsync(IPage page)
    {
        await page.OpenAsync("/equipment");
        await page.OpenFormAsync("[data-testid=add-ladle]", "[data-testid=ladle-form]");
        foreach (var (field, text) in new[] { ("code", "pf-1"), ("name", "Pouring furnace 1") }) await page.EnterAsync($"[data-testid=ladle-form] [data-field={field}] input", text);
        await page.SelectOptionAsync("[data-testid=ladle-form] [data-field=process] select", "pouringFurnace");
        foreach (var (field, text) in new[] { ("fillLimitKg", "2000"), ("mgFadePercentPerMinute", "0.0002"), ("heatLossKPerMinute", "0.5"), ("figuresSource", "invented for a test") })
            await page.EnterAsync($"[data-testid=ladle-form] [data-field={field}] input", text);
        await page.PressUntilAsync("[data-testid=ladle-form] button[type=submit]", "[data-ladle=pf-1]");
    }

    /// <summary>From the page of a ladle over into the one vessel there is.</summary>
    private static async Task OverAsync(IPage page, string way, string field, string kg)
    {
        await page.SelectOptionAsync("[data-testid=rest-form] [data-field=way] select", way);
        var choice = page.Locator($"[data-testid=rest-form] [data-field={field}] select");
        var option = await choice.Locator("option", new() { HasText = "Pouring furnace 1" }).GetAttributeAsync("value");
        await choice.SelectOptionAsync(option!);
        await page.EnterAsync("[data-testid=rest-form] [data-field=kg] input", kg);
        await page.PressUntilAsync("[data-testid=save-rest]", "[data-testid=rest] li");
        await Assertions.Expect(page.Locator("[data-testid=rest] li").First).ToContainTextAsync($"{kg} kg");
    }

    private async Task<long> NewestAsync() => (long)(await app.ReadAsync("SELECT Id FROM TreatedLadles ORDER BY Id DESC LIMIT 1"))[0][0];
}

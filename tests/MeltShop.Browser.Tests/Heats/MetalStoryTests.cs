using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Heats;

/// <summary>
/// A long heat at the furnace on a tablet, with a program of its own: dipped, back-charged, tapped, a part poured back, pigged, and a ladle that is
/// not tapped after all.
/// </summary>
public sealed class MetalStoryTests(Chromium chromium) : IAsyncLifetime
{
    private static readonly Dictionary<string, string> Bath =
        new() { ["C"] = "3,62", ["Si"] = "1,40", ["Mn"] = "0,30", ["P"] = "0,025", ["S"] = "0,012", ["Cu"] = "0,30" };

    private readonly RunningApp app = new();

    public async ValueTask InitializeAsync() => await app.StartAsync();

    public ValueTask DisposeAsync() => app.DisposeAsync();

    [Fact]
    public async Task Heat_DippedBackChargedTappedPouredBackPiggedAndALadleGivenUp_KeepsItsLedger()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        var heat = await page.StartHeatAsync("furnace-1", 3000);
        await page.WeighInAsync("2000");
        await Assertions.Expect(page.Locator("[data-testid=metal-sum]")).ToContainTextAsync("+");
        await SampleAsync(page, heat);

        await OpenAsync(page, "Dip or load cell", "dip-form", new() { ["kg"] = "2100", ["plusMinusKg"] = "40", ["reason"] = "steel rod" });
        await page.KeepStateAsync("heat-dip-form");
        await HandAsync(page, "dip-form", "2100 kg ± 40.0 kg");
        await OpenAsync(page, "Charge back into the bath", "back-charge-form", new() { ["kg"] = "200" });
        await page.Locator("[data-testid=back-charge-form] select").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await HandAsync(page, "back-charge-form");
        await SampleAsync(page, heat);

        await PrepareAsync(page, heat);
        await page.OpenFormAsync("text=This ladle will not be tapped", "[data-testid=abandon-form]");
        await page.EnterAsync("[data-testid=abandon-form] [data-field=reason] input", "hook broken");
        await page.PressUntilAsync("[data-testid=abandon-form] button[type=submit]", "[data-ladle-state=Abandoned]");

        await PrepareAsync(page, heat);
        await page.EnterAsync("[data-testid=tap-form] [data-field=kg] input", "790");
        await page.PressUntilAsync("[data-testid=tap-form] button[type=submit]", "[data-ladle-state=Tapped]");

        await page.OpenAsync(heat);
        var before = await KgAsync(page);
        await OpenAsync(page, "Pour back into the furnace", "pour-back-form", new() { ["kg"] = "150", ["reason"] = "mould broken" });
        await page.KeepStateAsync("heat-pour-back-form");
        await HandAsync(page, "pour-back-form");
        await Assertions.Expect(page.Locator("[data-testid=metal-sum]")).ToContainTextAsync("+150 kg"); // a new line: what lies below moves under the finger
        await OpenAsync(page, "Pig out", "pig-form", new() { ["kg"] = "250" });
        await HandAsync(page, "pig-form");
        await Assertions.Expect(page.Locator("[data-testid=metal-sum]")).ToContainTextAsync("−250 kg");

        Assert.Equal(before + 150 - 250, await KgAsync(page), 1d);
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
    }

    private static async Task OpenAsync(IPage page, string button, string form, Dictionary<string, string> fields)
    {
        await page.OpenFormAsync($"[data-testid=metal] > .presses button:has-text('{button}')", $"[data-testid={form}]");
        foreach (var (field, text) in fields) await page.EnterAsync($"[data-testid={form}] [data-field={field}] input", text);
    }

    private static async Task HandAsync(IPage page, string form, string? shown = null)
    {
        await page.PressUntilGoneAsync($"[data-testid={form}] button[type=submit]", $"[data-testid={form}]");
        if (shown is not null) await Assertions.Expect(page.Locator("[data-testid=metal-now]")).ToHaveTextAsync(shown);
    }

    private static async Task<double> KgAsync(IPage page) => double.Parse(
        (await page.Locator("[data-testid=metal-now]").InnerTextAsync()).Split('\u00a0')[0], System.Globalization.CultureInfo.InvariantCulture);

    private static async Task SampleAsync(IPage page, string heat)
    {
        await page.OpenSampleAsync(heat);
        foreach (var cell in await page.Locator("[data-testid=sample-form] [data-cell^='0.']:visible").AllAsync())
            await cell.FillAsync(Bath.GetValueOrDefault((await cell.GetAttributeAsync("data-cell"))!.Split('.')[1], "0,005"));
        await page.PressUntilAsync("[data-testid=sample-form] button[type=submit]", "[data-testid=sample-saved]");
    }

    private static async Task PrepareAsync(IPage page, string heat)
    {
        await page.OpenAsync(heat + "/ladle");
        await page.EnterAsync("[data-field=plannedKg] input", "800");
        await page.EnterAsync("[data-field=temperatureC] input", "1480");
        await page.WaitForSelectorAsync("[data-testid=stop-weight]");
        foreach (var check in await page.Locator("[data-check]").AllAsync()) await check.CheckAsync();
        await page.PressUntilAsync("[data-testid=load-pocket]", "[data-testid=tap-form]");
    }
}

using System.Text.RegularExpressions;
using MeltShop.Browser.Tests.Heats;
using MeltShop.Browser.Tests.Ladles;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>One heat from the plan to the released castings and the next heel, as a metallurgist drives it on a tablet.</summary>
public sealed class FirstHeatTests(Chromium chromium) : IAsyncLifetime
{
    private static readonly Dictionary<string, string> Bath =
        new() { ["C"] = "3,62", ["Si"] = "1,40", ["Mn"] = "0,30", ["P"] = "0,025", ["S"] = "0,012", ["Cu"] = "0,30" };

    private static readonly Dictionary<string, string> LastMetal =
        new() { ["Si"] = "2.50", ["Mn"] = "0.30", ["P"] = "0.025", ["S"] = "0.009", ["Cu"] = "0.30", ["Mg"] = "0.042" };

    private readonly RunningApp app = new();

    public async ValueTask InitializeAsync() => await app.StartAsync();

    public ValueTask DisposeAsync() => app.DisposeAsync();

    [Fact]
    public async Task FirstHeat_FromThePlanToTheNextHeel_IsThereAfterARestart()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");

        await StartFromPlanAsync(page);
        var heat = new Uri(page.Url).AbsolutePath;
        var number = (await page.Locator("[data-testid=heat-number]").InnerTextAsync()).Trim();
        await WeighInAsync(page);
        await SampleBathAsync(page);
        await PrepareLadleAsync(page, heat);
        await TapAsync(page);
        await SampleLastMetalAsync(page);
        await ReleaseAsync(page);
        await CloseAsync(page, heat);

        await page.GotoAsync("about:blank"); // a page that lost its program loads itself anew once that is back, over whatever is opened then
        await app.KillAsync();
        await app.StartAsync();
        await page.OpenAsync("/history");
        var row = page.Locator($"tr[data-heat='{number}']");
        await Assertions.Expect(row).ToContainTextAsync("Closed");
        await Assertions.Expect(row).ToContainTextAsync("1 released");
        await row.Locator("a").ClickAsync();
        await page.WaitForSelectorAsync("[data-testid=sample]");
        await page.OpenAsync("/charge?furnace=furnace-1&grade=EN-GJS-500-7&kg=5000");
        await Assertions.Expect(page.Locator("[data-testid=heel]")).ToContainTextAsync(number);
    }

    private static async Task StartFromPlanAsync(IPage page)
    {
        await page.OpenAsync("/charge?furnace=furnace-1&grade=EN-GJS-500-7&kg=5000");
        await page.WaitForSelectorAsync("[data-testid=in-plan]");
        await page.StartChargeAsync();
    }

    private static async Task WeighInAsync(IPage page)
    {
        foreach (var code in await page.Locator("tr[data-material]").EvaluateAllAsync<string[]>("rows => rows.map(row => row.dataset.material)"))
        {
            var target = await page.TargetAsync(code);
            await page.WeighInAsync(code, target);
            await Assertions.Expect(page.Locator($"tr[data-material='{code}'] td[data-heading=Weighed]")).ToContainTextAsync(target);
        }
    }

    private static async Task SampleBathAsync(IPage page)
    {
        await page.OpenSampleAsync();
        for (var burn = 0; burn < 3; burn++) await FillAsync(page, "[data-testid=sample-form]", burn, Bath);
        await page.PressUntilAsync("[data-testid=sample-form] button[type=submit]", "[data-testid=sample] .limit");
    }

    private static async Task PrepareLadleAsync(IPage page, string heat)
    {
        await page.OpenAsync(heat + "/ladle");
        await TypeAsync(page, "[data-field=plannedKg] input", "800");
        await TypeAsync(page, "[data-field=temperatureC] input", "1480");
        await Assertions.Expect(page.Locator("[data-testid=alloy-kg]")).ToContainTextAsync("kg");
        foreach (var check in await page.Locator("[data-check]").AllAsync()) await check.CheckAsync();
        await page.PressUntilAsync("[data-testid=load-pocket]", "[data-testid=tap-form]");
    }

    private static async Task TapAsync(IPage page)
    {
        var alloy = await page.Locator("[data-testid=alloy-kg]").InnerTextAsync();
        await TypeAsync(page, "[data-testid=tap-form] [data-field=kg] input", "790");
        await page.PressUntilAsync("[data-testid=tap-form] button[type=submit]", "[data-testid=reaction-ended]");
        await page.PressUntilAsync("[data-testid=reaction-ended]", "[data-ladle-state=Pouring]");
        await Assertions.Expect(page.Locator("ladle-clock span").First).ToHaveTextAsync(new Regex("^([1-9][0-9]*:[0-5][0-9]|0:(0[2-9]|[1-5][0-9])) since")); // it goes on
        await Assertions.Expect(page.Locator("[data-testid=alloy-kg]")).ToHaveTextAsync(alloy);
        await Assertions.Expect(page.Locator("[data-testid=mg-curve]")).ToBeVisibleAsync();
    }

    private static async Task SampleLastMetalAsync(IPage page)
    {
        await Assertions.Expect(page.Locator("[data-testid=release]")).ToBeDisabledAsync();
        await FillAsync(page, "[data-testid=last-metal-form]", 0, LastMetal);
        await page.PressUntilAsync("[data-testid=save-last-metal]", "[data-testid=last-metal] .limit");
        await page.WaitForSelectorAsync("[data-ladle-state=Held]");
    }

    private static async Task ReleaseAsync(IPage page)
    {
        await page.ReleaseAsync();
    }

    private static async Task CloseAsync(IPage page, string heat)
    {
        await page.OpenAsync(heat);
        await page.PressUntilAsync("[data-testid=end] [data-opens=close-form]", "[data-testid=close-form]");
        await TypeAsync(page, "[data-testid=close-form] input", "100");
        await page.WaitForSelectorAsync("[data-testid=heel-left]");
        await page.PressUntilGoneAsync("[data-testid=close-form] button[type=submit]", "[data-testid=end]");
    }

    private static async Task TypeAsync(IPage page, string selector, string text)
    {
        await page.FillAsync(selector, text);
        await page.Locator(selector).BlurAsync();
    }

    /// <summary>Every column of a burn; what is not among the values gets a trace.</summary>
    private static async Task FillAsync(IPage page, string form, int burn, Dictionary<string, string> values)
    {
        await page.WaitForSelectorAsync($"{form} [data-cell]");
        foreach (var cell in await page.Locator($"{form} [data-cell^='{burn}.']:visible").AllAsync())
        {
            var element = (await cell.GetAttributeAsync("data-cell"))!.Split('.')[1];
            await cell.FillAsync(values.GetValueOrDefault(element, "0.005"));
        }
    }
}

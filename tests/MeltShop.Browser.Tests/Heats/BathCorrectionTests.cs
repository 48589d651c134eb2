using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Heats;

/// <summary>A bath that is low in carbon: from the sample over the proposal and the melter's task to the next sample.</summary>
[Collection<DemoAppCollection>]
public sealed class BathCorrectionTests(Chromium chromium, RunningApp app)
{
    [Fact]
    public async Task Bath_LowInCarbon_IsCorrectedWeighedInAndSampledAgain()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        await StartAsync(page);
        var heat = new Uri(page.Url).AbsolutePath;
        await SampleAsync(page, new() { ["C"] = "3,20", ["Si"] = "1,40", ["Mn"] = "0,25", ["P"] = "0,020", ["S"] = "0,010", ["Cu"] = "0,35" });

        await page.PressUntilAsync("[data-testid=to-correction]", "[data-testid=correction-form]");
        await page.EnterAsync("[data-field=temperatureC] input", "1450");
        await page.HeardAsync();
        await page.WaitForSelectorAsync("[data-testid=proposal][data-current=true]");
        var additions = await page.Locator("[data-testid=additions] tr[data-material]").EvaluateAllAsync<string[]>("rows => rows.map(row => row.dataset.material)");
        Assert.NotEmpty(additions);
        await Assertions.Expect(page.Locator("[data-testid=proposal] [data-verdict=low], [data-testid=proposal] [data-verdict=high]")).ToHaveCountAsync(0);
        await page.PressUntilAsync("[data-testid=accept]", "[data-testid=correction][data-done=false]");
        Assert.Empty(await page.FormFaultsAsync("correction-weigh"));
        foreach (var material in additions)
        {
            var row = $"[data-testid=correction] tr[data-material='{material}']";
            await page.OpenFormAsync($"{row} button", $"{row} + tr [data-testid=correction-weigh]");
            var target = (await page.Locator($"{row} td").First.InnerTextAsync()).Split(' ', '\u00a0')[^2];
            await page.FillAsync("[data-testid=correction-weigh] input", target);
            await page.PressUntilGoneAsync("[data-testid=correction-weigh] button[type=submit]", "[data-testid=correction-weigh]");
        }

        await page.WaitForSelectorAsync("[data-testid=correction][data-done=true]");
        await page.OpenAsync(heat);
        await SampleAsync(page, new() { ["C"] = "3,62", ["Si"] = "1,42", ["Mn"] = "0,25", ["P"] = "0,020", ["S"] = "0,010", ["Cu"] = "0,35" });
        await Assertions.Expect(page.Locator("[data-testid=predicted] [data-element=C]")).ToContainTextAsync("→ 3.62");
    }

    private static async Task StartAsync(IPage page)
    {
        await page.OpenAsync("/charge?furnace=furnace-3&grade=EN-GJS-500-7&kg=1800");
        await page.WaitForSelectorAsync("[data-testid=in-plan]");
        await page.StartChargeAsync();
        var steel = await page.Locator("tr[data-material]", new() { HasTextRegex = new("[0-9]{3}\\skg") }).First.GetAttributeAsync("data-material");
        await page.WeighInAsync(steel!, "900");
        await Assertions.Expect(page.Locator($"tr[data-material='{steel}'] td[data-heading=Weighed]")).ToContainTextAsync("900");
    }

    private static async Task SampleAsync(IPage page, Dictionary<string, string> values)
    {
        await page.OpenSampleAsync();
        foreach (var cell in await page.Locator("[data-testid=sample-form] [data-cell^='0.']:visible").AllAsync())
        {
            var element = (await cell.GetAttributeAsync("data-cell"))!.Split('.')[1];
            await cell.FillAsync(values.GetValueOrDefault(element, "0.005"));
        }

        await page.PressUntilAsync("[data-testid=sample-form] button[type=submit]", "[data-testid=sample-saved]");
    }
}

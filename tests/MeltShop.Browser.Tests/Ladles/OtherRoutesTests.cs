using MeltShop.Browser.Tests.Heats;
using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Ladles;

/// <summary>Grey iron on its way without magnesium, and four ladles into one mould; in a program of their own.</summary>
public sealed class OtherRoutesTests(RunningApp app, Chromium chromium) : IClassFixture<RunningApp>
{
    private static readonly Dictionary<string, string> Bath = new()
    {
        ["C"] = "3.31", ["Si"] = "1.82", ["Mn"] = "0.70", ["P"] = "0.05", ["S"] = "0.075", ["Cr"] = "0.15", ["Cu"] = "0.30",
    };

    private static readonly Dictionary<string, string> LastMetal = new(Bath) { ["Si"] = "1.98", ["C"] = "3.30" };

    [Fact]
    public async Task GreyHeat_FromTheCardToTheRelease_NeverAsksForMagnesium()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        var heat = await page.StartHeatAsync("furnace-1", 5000, "EN-GJL-250");
        await page.WeighInAsync("2500");
        await page.OpenSampleAsync();
        await FillAsync(page, "sample-form", Bath);
        await page.PressUntilAsync("[data-testid=sample-form] button[type=submit]", "[data-testid=sample] .limit");

        await page.OpenAsync(heat + "/ladle");
        await Assertions.Expect(page.Locator("[data-testid=no-wedge]")).ToBeVisibleAsync();
        await page.EnterAsync("[data-field=plannedKg] input", "800");
        await page.EnterAsync("[data-field=temperatureC] input", "1440");
        await page.WaitForSelectorAsync("[data-testid=stop-weight]");
        await Assertions.Expect(page.Locator("[data-testid=alloy-kg], [data-field=targetMgPercent]")).ToHaveCountAsync(0);
        foreach (var check in await page.Locator("[data-check]").AllAsync()) await check.CheckAsync();
        await page.PressUntilAsync("[data-testid=load-pocket]", "[data-testid=tap-form]");
        await page.EnterAsync("[data-testid=tap-form] [data-field=kg] input", "805");
        await page.PressUntilAsync("[data-testid=tap-form] button[type=submit]", "[data-ladle-state=Pouring]"); // there is no reaction to wait for
        await Assertions.Expect(page.Locator("[data-limit=Magnesium], [data-testid=reaction-ended]")).ToHaveCountAsync(0);
        await page.KeepStateAsync("ladle-grey-pouring");

        await page.EnterAsync("[data-testid=mould-form] [data-field=kg] input", "120");
        await page.EnterAsync("[data-testid=mould-form] [data-field=pourSeconds] input", "15");
        await page.PressUntilAsync("[data-testid=mould-poured]", "[data-mould='1']");
        await FillAsync(page, "last-metal-form", LastMetal);
        await page.PressUntilAsync("[data-testid=save-last-metal]", "[data-ladle-state=Held]");
        await page.ReleaseAsync();
    }

    [Fact]
    public async Task FourLadles_IntoOneMould_EachHasToPassByItself()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        await page.OpenAsync("/joint-pour");
        await page.PressUntilAsync("[data-testid=add-joint-ladle]", "[data-field='ladles[2].kg']");
        await page.PressUntilAsync("[data-testid=add-joint-ladle]", "[data-field='ladles[3].kg']");
        string[] magnesium = ["0.050", "0.048", "0.046", "0.041"];
        for (var n = 0; n < 4; n++)
        {
            foreach (var (field, text) in new[]
            {
                ("kg", "2000"), ("mgPercent", magnesium[n]), ("mgFloorPercent", "0.040"), ("fade", "0.001"), ("temperatureC", "1420"), ("leastC", "1300"),
                ("heatLoss", "4"), ("treatmentMinutes", "6"), ("pourFrom", $"{n}"), ("pourTo", $"{n + 3}"),
            }) await page.EnterAsync($"[data-field='ladles[{n}].{field}'] input", text);
        }

        await Assertions.Expect(page.Locator("[data-passes=no]")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("[data-part]")).ToHaveCountAsync(4);
        await Assertions.Expect(page.Locator("[data-part='3']")).ToContainTextAsync("magnesium, 2.0 min too long"); // a minute of life, three of pour
        await page.KeepStateAsync("joint-pour-fails");
        await page.EnterAsync("[data-field='ladles[3].mgPercent'] input", "0.045");
        await Assertions.Expect(page.Locator("[data-passes=yes]")).ToBeVisibleAsync();
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
    }

    private static async Task FillAsync(IPage page, string form, Dictionary<string, string> analysis)
    {
        await page.WaitForSelectorAsync($"[data-testid={form}] [data-cell]");
        foreach (var cell in await page.Locator($"[data-testid={form}] [data-cell^='0.']:visible").AllAsync())
        {
            var element = (await cell.GetAttributeAsync("data-cell"))!.Split('.')[1];
            await cell.FillAsync(analysis.GetValueOrDefault(element, "0.004"));
        }
    }
}

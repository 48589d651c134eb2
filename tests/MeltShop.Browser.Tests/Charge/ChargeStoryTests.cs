using System.Globalization;
using MeltShop.Browser.Tests.Heats;
using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Charge;

/// <summary>A charge from its plan to the scale: what is weighed over or under is planned around, until nothing helps any more, and that is said.</summary>
public sealed class ChargeStoryTests(Chromium chromium) : IAsyncLifetime
{
    // An app of its own: no other test's furnace is touched.
    private readonly RunningApp app = new();

    public async ValueTask InitializeAsync() => await app.StartAsync();

    public ValueTask DisposeAsync() => app.DisposeAsync();

    [Fact]
    public async Task Charge_ChangedWeighedOverUnderAndFarOver_IsPlannedAnewUntilItIsSaidToBeOutOfReach()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        await context.SilentAfterAsync(600); // a line that is only slow
        var page = await context.SignInAsync("henning");
        var circuit = await HeldCircuit.OfAsync(page);
        await page.OpenAsync("/charge?furnace=furnace-3&grade=EN-GJS-500-7&kg=1800");
        await Expect(page, "[data-testid=plan-age][data-current=true]").ToBeVisibleAsync();
        await page.EnterAsync("[data-field=meltKg] input", "1500");
        await Expect(page, "[data-testid=totals]").ToContainTextAsync("1500 kg");
        await Expect(page, "[data-testid=plan-age][data-current=true]").ToBeVisibleAsync();
        await page.PressUntilAsync("[data-testid=plans] .presses button", "[data-testid=plans] [data-plan]");
        await page.KeepStateAsync("charge-plans-side-by-side");
        await page.StartChargeAsync();

        var codes = await page.Locator("tr[data-material]").EvaluateAllAsync<string[]>("rows => rows.map(row => row.dataset.material)");
        await WeighAsync(page, codes[0], Number(await page.TargetAsync(codes[0])) + 1); // of 27 kg of carburiser
        await Expect(page, "[data-testid=rest][data-standing=Kept]").ToBeVisibleAsync();

        await page.KeepStateAsync("heat-weighed-over");
        await WeighAsync(page, codes[1], Number(await page.TargetAsync(codes[1])) / 2);
        await Expect(page, "[data-testid=rest][data-standing=Kept]").ToBeVisibleAsync();

        await WeighAsync(page, codes[0], 1300);
        await PressInBeforeItsRowIsHeardAsync(page, circuit, "1200");
        await Expect(page, "[data-testid=rest][data-standing=Missed] [data-missed]").Not.ToHaveCountAsync(0);
        await Expect(page, "[data-testid=overfull]").ToBeVisibleAsync();
        await page.KeepStateAsync("heat-out-of-reach");
    }

    private static ILocatorAssertions Expect(IPage page, string selector) => Assertions.Expect(page.Locator(selector));

    /// <summary>Over a slow line: what is pressed in is of the row that was pressed before it, though the form does not show its material yet.</summary>
    private static async Task PressInBeforeItsRowIsHeardAsync(IPage page, HeldCircuit circuit, string kg)
    {
        var code = await page.Locator("[data-testid=weighings] tr:not(.chosen):has(.row-press)").First.GetAttributeAsync("data-material");
        var weighed = page.Locator($"tr[data-material='{code}'] td[data-heading=Weighed]");
        var before = await weighed.InnerTextAsync();
        circuit.Hold();
        await page.TapAsync($"tr[data-material='{code}'] .row-press");
        await page.EnterAsync("[data-testid=weigh-form] [data-field=kg] input", kg);
        await page.TapAsync("[data-testid=weigh-form] button[type=submit]");
        circuit.GoOn();
        await Assertions.Expect(weighed).Not.ToHaveTextAsync(before);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static Task WeighAsync(IPage page, string code, double kg) => page.WeighInAsync(code, kg.ToString("0.00", CultureInfo.InvariantCulture));
}

using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>The keys on the screen of a tablet.</summary>
[Collection(typeof(DemoAppCollection))]
public sealed class KeypadTests(Chromium chromium, RunningApp app)
{
    [Fact]
    public async Task Keypad_OnATablet_TypesIntoTheFieldAndGoesOnToTheNext()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        await page.VisitAsync("/parts");
        var field = page.Locator("[data-field=empty] input");
        Task PressAsync(string key) => page.Locator($"#keypad [data-key='{key}']").TapAsync();

        await Assertions.Expect(page.Locator("#keypad")).ToBeHiddenAsync();
        await field.TapAsync();
        await Assertions.Expect(page.Locator("#keypad")).ToBeVisibleAsync();
        await Assertions.Expect(field).ToHaveJSPropertyAsync("inputMode", "none");
        Assert.True(await page.EvaluateAsync<int>("() => Math.min(...[...document.querySelectorAll('.key:not([hidden])')].map(key => Math.min(key.offsetWidth, key.offsetHeight)))") >= 72);
        await Assertions.Expect(page.Locator("#keypad [data-key='<']")).ToBeHiddenAsync();
        await page.KeepAsync("parts-tablet-keypad");
        Assert.Empty(await page.FaultsAsync());
        foreach (var width in new[] { 390, 360 })
        {
            await page.SetViewportSizeAsync(width, 844);
            Assert.Empty(await page.FaultsAsync());
        }

        await page.KeepAsync("parts-phone-keypad");
        await page.SetViewportSizeAsync(1180, 820);
        foreach (var key in new[] { "1", "2", ".", "5", "5", "back" }) await PressAsync(key);
        await Assertions.Expect(field).ToHaveValueAsync("12.5");
        await PressAsync("next");
        await Assertions.Expect(page.Locator("[data-field=empty] .field-note")).ToContainTextAsync("read as 12.5 kg");
        await Assertions.Expect(page.Locator("[data-field=asked] input")).ToBeFocusedAsync();

        await page.Locator("[data-cell='0.C']").First.TapAsync();
        foreach (var key in new[] { ".", "0", "3", "<", "next" }) await PressAsync(key);
        await Assertions.Expect(page.Locator("[data-cell='0.C']").First).ToHaveValueAsync("<.03");
        await Assertions.Expect(page.Locator("[data-cell='1.C']").First).ToBeFocusedAsync();
        await Assertions.Expect(page.Locator("[data-testid=heard]")).ToHaveTextAsync("<.03");
        await PressAsync("close");
        await Assertions.Expect(page.Locator("#keypad")).ToBeHiddenAsync();
    }
}

using System.Text.RegularExpressions;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>Finding something by the keyboard alone; nothing is changed.</summary>
[Collection<DemoAppCollection>]
public sealed partial class FindTests(Chromium chromium, RunningApp app)
{
    [Fact]
    public async Task Find_ByOneKeyFromAnyPage_LeadsToAHeat()
    {
        await using var context = await chromium.DeskAsync(app.Address);
        var page = await context.SignInAsync("ruta");
        await page.OpenAsync("/yard");

        await page.Keyboard.PressAsync("F2");
        await Assertions.Expect(page.Locator("[data-field=words] input")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("0001");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForSelectorAsync("[data-testid=found] [data-kind=Heat]");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");

        await page.IsAtAsync("/heats/*");
        await Assertions.Expect(page.Locator(".as-of")).ToHaveTextAsync(Age()); // every page says when it was read
    }

    [GeneratedRegex("^As of [0-9]{1,2} [A-Z][a-z]+ [0-9]{4} [0-9]{2}:[0-9]{2}:[0-9]{2}$")]
    private static partial Regex Age();
}

using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Grades;

/// <summary>The grades of the demo foundry, and a window that a metallurgist moves.</summary>
[Collection<DemoAppCollection>]
public sealed class GradesTests(Chromium chromium, RunningApp app)
{
    [Fact]
    public async Task Grades_OfTheDemo_ShowBothWindowsTheMinimaAndTheirSources()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        foreach (var (code, isDuctile) in new[]
                 {
                     ("EN-GJS-400-15", true), ("EN-GJS-500-7", true), ("EN-GJS-600-3", true), ("EN-GJS-700-2", true),
                     ("EN-GJL-200", false), ("EN-GJL-250", false), ("EN-GJL-300", false),
                 })
        {
            await OpenGradeAsync(page, code);
            foreach (var stage in new[] { "Furnace", "Poured" })
                await Assertions.Expect(page.Locator($"[data-stage={stage}] tr[data-quantity=C]")).ToBeVisibleAsync();

            await Assertions.Expect(page.Locator("[data-stage=Furnace] h2")).ToContainTextAsync("before treatment");
            await Assertions.Expect(page.Locator("[data-testid=minima]")).ToContainTextAsync(isDuctile ? "EN 1563" : "EN 1561");
            await Assertions.Expect(page.Locator("[data-stage=Poured] tr[data-quantity=Mg]")).ToHaveCountAsync(isDuctile ? 1 : 0);
        }
    }

    [Fact]
    public async Task Window_Moved_StandsOnThePageAfterAReload()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        await OpenGradeAsync(page, "EN-GJL-300");
        await page.OpenFormAsync("[data-stage=Poured] tr[data-quantity=C] button", "[data-testid=window-form]");
        await page.FillAsync("[data-testid=window-form] [data-field='window.most'] input", "2,0");
        await page.PressAsync("[data-testid=window-form] [data-field='window.most'] input", "Enter");
        await Assertions.Expect(page.Locator("[data-testid=window-form] .field-error, [data-testid=window-form] [role=alert]").First).ToBeVisibleAsync();

        await page.FillAsync("[data-testid=window-form] [data-field='window.most'] input", "3,44");
        await page.PressAsync("[data-testid=window-form] [data-field='window.most'] input", "Enter");
        await Assertions.Expect(page.Locator("[data-testid=window-form]")).ToHaveCountAsync(0);
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("[data-stage=Poured] tr[data-quantity=C]")).ToContainTextAsync("3.44");
    }

    private static async Task OpenGradeAsync(IPage page, string code)
    {
        await page.OpenAsync("/grades");
        await page.PressUntilAsync($"a:has-text('{code}')", "[data-stage=Furnace]");
    }
}

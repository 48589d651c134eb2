using System.Text;
using System.Text.RegularExpressions;
using MeltShop.Browser.Tests.Running;

namespace MeltShop.Browser.Tests.Charge;

/// <summary>The melter's card of the demo's heat, on a tablet and on paper.</summary>
[Collection<DemoAppCollection>]
public sealed class WeighingSheetTests(Chromium chromium, RunningApp app)
{
    [Fact]
    public async Task Sheet_Printed_IsOneSheet()
    {
        await using var context = await chromium.DeskAsync(app.Address);
        var page = await context.SignInAsync("tilda");
        await page.OpenAsync("/heats/1/weighing");
        await page.WaitForSelectorAsync("[data-testid=loading-sheet]");

        var paper = Encoding.Latin1.GetString(await page.PdfAsync(new() { Format = "A4", PreferCSSPageSize = true }));
        Assert.Single(Regex.Matches(paper, @"/Type\s*/Page\b(?!s)"));

        // As on the screen below: figures of 10 mm, while the charge is of few materials. On paper a pixel is a 96th of an inch.
        await page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        var masses = await page.Locator(".loading-kg").AllAsync();
        Assert.InRange(masses.Count, 1, 8);
        foreach (var kg in masses)
            Assert.True(await kg.EvaluateAsync<double>("e => parseFloat(getComputedStyle(e).fontSize)") * 0.7 * 25.4 / 96 >= 10);
    }

    [Fact]
    public async Task Sheet_OnATablet_IsReadFromTwoMetres()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("tilda");
        await page.OpenAsync("/heats/1/weighing");
        await page.WaitForSelectorAsync("[data-testid=loading-sheet]");

        // Figures of a two-hundredth of the distance are read with ease (common practice, no source): 10 mm at two metres. A tablet of 1180 px
        // is some 245 mm wide, so a pixel is 0.2 mm, and figures are 0.7 of the size of their type: 72 px.
        foreach (var kg in await page.Locator(".loading-kg").AllAsync())
            Assert.True(await kg.EvaluateAsync<double>("e => parseFloat(getComputedStyle(e).fontSize)") >= 72);
        foreach (var row in await page.Locator(".loading-order tbody tr").AllAsync())
            Assert.True((await row.BoundingBoxAsync())!.Height >= 72);
    }
}

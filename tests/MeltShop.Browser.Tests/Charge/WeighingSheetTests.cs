using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Charge;

/// <summary>The melter's card of the demo's heat, on a tablet and on paper.</summary>
[Collection<DemoAppCollection>]
public sealed class WeighingSheetTests(Chromium chromium, RunningApp app)
{
    [Fact]
    public async Task Sheet_Printed_IsOneSheetWithTheHeatAndItsNumberAtTheFoot()
    {
        await using var context = await chromium.DeskAsync(app.Address);
        var page = await context.SignInAsync("tilda");
        await OpenAsync(page);

        foreach (var format in Paper.Formats) AssertFoot(Assert.Single(await page.PrintAsync(format)), 1, 1);

        // As on the screen below: figures of 10 mm, while the charge is of few materials. On paper a pixel is a 96th of an inch.
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        var masses = await page.Locator(".loading-kg").AllAsync();
        Assert.InRange(masses.Count, 1, 8);
        foreach (var kg in masses)
            Assert.True(await kg.EvaluateAsync<double>("e => parseFloat(getComputedStyle(e).fontSize)") * 0.7 * 25.4 / 96 >= 10);
    }

    [Fact]
    public async Task Record_OfAHeat_SaysOnEachSheetWhichHeatAndWhichOfHowManySheetsItIs()
    {
        await using var context = await chromium.DeskAsync(app.Address);
        var page = await context.SignInAsync("tilda");
        await page.OpenAsync("/heats/1");

        foreach (var format in Paper.Formats)
        {
            var sheets = await page.PrintAsync(format);
            Assert.InRange(sheets.Count, 2, 12);
            Assert.All(sheets.Index(), sheet => AssertFoot(sheet.Item, sheet.Index + 1, sheets.Count));
        }
    }

    [Fact]
    public async Task Sheet_OfManyMaterialsOrWithWordsOnTheRest_IsOneSheetToo()
    {
        await using var context = await chromium.DeskAsync(app.Address);
        var page = await context.SignInAsync("tilda");
        foreach (var (rows, hasRest) in new[] { (8, true), (9, false), (11, true), (12, false), (16, false) })
        {
            await OpenAsync(page);
            await page.EvaluateAsync("""
                rows => {
                    const body = document.querySelector('.loading-order tbody');
                    while (body.rows.length < rows) body.append(body.rows[0].cloneNode(true));
                }
                """, rows);
            if (hasRest)
            {
                // As long as the news of the rest get where the plan's heel and the ledger's are apart and the furnace might be too small.
                await page.EvaluateAsync("""
                    () => {
                        const words = 'Heel: one figure, another figure, and what the rest is planned with, as long as two lines of the paper that the card hangs on. ';
                        document.querySelector('.loading-order').insertAdjacentHTML('beforebegin',
                            `<div data-testid="rest"><p class="quiet">${words}</p><p class="caution">${words}${words}</p><p class="caution">${words}</p></div>`);
                    }
                    """);
            }

            Assert.Equal(rows, await page.Locator(".loading-order tbody tr").CountAsync());
            foreach (var format in Paper.Formats) Assert.True((await page.PrintAsync(format)).Count == 1, $"{rows} rows on {format}");
        }
    }

    [Fact]
    public async Task Sheet_OnATablet_IsReadFromTwoMetres()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("tilda");
        await OpenAsync(page);

        // ISO 9241-303, Ergonomics of human-system interaction: requirements for electronic visual displays (International Organization for
        // Standardization, 2011), Latin characters at least 16 minutes of arc high (from memory): 9.3 mm at two metres. A tablet of 1180 px is some
        // 245 mm wide, so a pixel is 0.208 mm, and capitals and figures are 0.7 of the size of their type. What is to be weighed now, how much
        // of it, and every target keep that.
        Assert.All(await Minutes(page, ".loading-kg"), minutes => Assert.InRange(minutes, 16, 60));
        // The other words of the card: twice the 5 minutes that a person of normal sight just reads (ISO 8596, visual acuity testing, 2017; from memory).
        Assert.All(await Minutes(page, ".loading-order tbody th, .loading-order tbody td"), minutes => Assert.InRange(minutes, 10, 60));
        Assert.All(await Minutes(page, "[data-testid=loading-closed]"), minutes => Assert.InRange(minutes, 10, 60)); // the demo's heat is over
        // The heads say what everybody knows after the first card: just to be read.
        Assert.All(await Minutes(page, ".loading-order thead th"), minutes => Assert.InRange(minutes, 5, 60));
        foreach (var row in await page.Locator(".loading-order tbody tr").AllAsync())
            Assert.True((await row.BoundingBoxAsync())!.Height >= 72);

        // A tablet of less width has no scroll to the side, and is read from there too.
        await page.SetViewportSizeAsync(1024, 768);
        Assert.Equal(0, await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth"));
        Assert.All(await Minutes(page, ".loading-kg"), minutes => Assert.InRange(minutes, 16, 60));
        await page.SetViewportSizeAsync(1180, 820);

        // The demo's heat is charged; what is next to weigh stands on the card of the page of parts.
        await page.VisitAsync("/parts");
        Assert.All(await Minutes(page, ".loading-now .loading-name, .loading-now .loading-left"), minutes => Assert.InRange(minutes, 16, 60));
        Assert.All(await Minutes(page, ".loading-now .from-lots"), minutes => Assert.InRange(minutes, 10, 60));
    }

    /// <summary>Of the demo's heat, as of when, and which of how many sheets.</summary>
    private static void AssertFoot(string words, int sheet, int sheets)
    {
        Assert.Matches(@"OTF-\d{4}-0001, As of [^/]*\d\d:\d\d:\d\d", words);
        Assert.Matches($@"\b{sheet} ?/ ?{sheets}\b", words);
    }

    private static async Task OpenAsync(IPage page)
    {
        await page.OpenAsync("/heats/1/weighing");
        await page.WaitForSelectorAsync("[data-testid=loading-sheet]");
    }

    /// <summary>How high the capitals of each place are, minutes of arc at two metres.</summary>
    private static async Task<IReadOnlyList<double>> Minutes(IPage page, string places)
    {
        var sizes = await page.Locator(places).EvaluateAllAsync<double[]>("all => all.map(e => parseFloat(getComputedStyle(e).fontSize))");
        Assert.NotEmpty(sizes);
        return [.. sizes.Select(px => Math.Atan(px * 0.7 * 245 / 1180 / 2000) * 180 / Math.PI * 60)];
    }
}

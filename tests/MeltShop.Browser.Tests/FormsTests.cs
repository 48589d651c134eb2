using MeltShop.Browser.Tests.Ladles;
using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>
/// Every form that a press opens: measured on the tablet, at the desk and on a phone, read by axe in both themes, kept as a picture, and opened
/// again when its page is loaded anew. With a program of its own.
/// </summary>
public sealed class FormsTests(Chromium chromium, RunningApp app) : IClassFixture<RunningApp>
{
    private const string Plan = "/charge?furnace=furnace-1&grade=EN-GJS-500-7&kg=5000";

    /// <summary>Pages whose forms the demo foundry offers to its metallurgist.</summary>
    private static readonly string[] Offering =
    [
        "/heats/1", "/ladles/3/castings", "/ladles/4/castings", "/grades/1", "/equipment", "/laboratory", "/laboratory/instruments/1", "/orders", "/orders/5", "/yard/1",
    ];

    /// <summary>Only a correction that was accepted offers it; its story looks at it.</summary>
    private static readonly string[] Elsewhere = ["correction-weigh"];

    private readonly HashSet<string> opened = [];

    [Fact]
    public async Task Form_ThatAPressOpens_IsLargeEnoughAndReadsWell()
    {
        await using var floor = await chromium.TabletAsync(app.Address);
        await using var inspection = await chromium.TabletAsync(app.Address);
        await using var office = await chromium.TabletAsync(app.Address);
        var page = await floor.SignInAsync("henning");
        var faults = await OnTheFloorAsync(page);
        var held = new Uri(page.Url).AbsolutePath;
        foreach (var path in Offering) faults.AddRange(await VisitedAsync(page, path));
        faults.AddRange(await VisitedAsync(await inspection.SignInAsync("ivo"), held + "/castings"));
        page = await office.SignInAsync("maren");
        foreach (var path in Places.All.Where(Places.IsAdministered)) faults.AddRange(await VisitedAsync(page, path));

        faults.AddRange(Places.Forms.Except(Elsewhere).Except(opened).Select(form => $"{form} was not opened"));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>The demo's heat is closed: one that is on its way, with a coin that is not back and a ladle that is prepared, poured, and held.</summary>
    private async Task<List<string>> OnTheFloorAsync(IPage page)
    {
        await page.OpenAsync(Plan);
        await page.WaitForSelectorAsync("[data-opens=start-ask]:enabled");
        var faults = await OpenedAsync(page);
        var heat = await page.SampledHeatAsync();
        await page.SendCoinAsync();
        faults.AddRange(await VisitedAsync(page, heat));
        await page.PrepareLadleAsync(heat);
        faults.AddRange(await OpenedAsync(page));
        await page.TapAndReactAsync("790");
        await page.MouldAsync("1", "90");
        faults.AddRange(await OpenedAsync(page));
        await page.VisitAsync(new Uri(page.Url).AbsolutePath);
        await page.LastMetalAsync("0.042");
        return [.. faults, .. await OpenedAsync(page)];
    }

    private async Task<List<string>> VisitedAsync(IPage page, string path)
    {
        await page.VisitAsync(path);
        await page.HeardAsync(); // what it draws after the rest of it is there
        return await OpenedAsync(page);
    }

    /// <summary>Each form of this page that was not opened before. One that stands in the place of another's press is left for it.</summary>
    private async Task<List<string>> OpenedAsync(IPage page)
    {
        var faults = new List<string>();
        var path = new Uri(page.Url).PathAndQuery;
        for (var isFresh = true; ;)
        {
            var offered = await page.Locator("main [data-opens]:enabled:visible").EvaluateAllAsync<string[]>("all => all.map(press => press.dataset.opens)");
            if (offered.FirstOrDefault(form => !opened.Contains(form)) is { } next)
            {
                opened.Add(next);
                isFresh = false;
                faults.AddRange(await page.FormFaultsAsync(next));
            }
            else if (isFresh)
            {
                return faults;
            }
            else
            {
                faults.AddRange(await page.ReopenedFaultsAsync());
                await page.VisitAsync(path);
                isFresh = true;
            }
        }
    }
}

using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>
/// Every page at every size and in every look: opened without an error or a stranger's address, measured, read by axe, and kept as a picture.
/// It takes the longest of all: with a program of its own it runs beside the others.
/// </summary>
public sealed class LookTests(Chromium chromium, RunningApp app) : IClassFixture<RunningApp>
{
    [Fact]
    public async Task Page_Any_IsLargeEnoughAndReadsWellInEveryLook()
    {
        await using var tablet = await chromium.TabletAsync(app.Address);
        await using var desk = await chromium.DeskAsync(app.Address);
        await using var phone = await chromium.PhoneAsync(app.Address);
        var faults = await Task.WhenAll(
            OnTabletAsync(await tablet.SignInAsync("henning")), InOneLookAsync(await desk.SignInAsync("henning"), "desk"),
            InOneLookAsync(await phone.SignInAsync("ruta"), "phone"));

        Assert.True(Places.All.Count > 12);
        Assert.True(faults.All(found => found.Count == 0), string.Join('\n', faults.SelectMany(found => found)));
    }

    private static async Task<List<string>> OnTabletAsync(IPage page)
    {
        var faults = Watched(page);
        foreach (var path in Places.All)
        {
            await page.VisitAsync(path);
            faults.AddRange(await page.FaultsAsync());
            faults.AddRange(await AxeFindings.AllAsync(page));
            await page.KeepAsync($"{Places.Name(path)}-tablet-light");
            foreach (var (name, dark, more) in new[] { ("dark", true, false), ("contrast", false, true) })
            {
                await page.EmulateMediaAsync(new() { ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light, Contrast = more ? Contrast.More : Contrast.NoPreference });
                faults.AddRange((await AxeFindings.ContrastAsync(page)).Select(fault => $"{name}: {fault}"));
                await page.KeepAsync($"{Places.Name(path)}-tablet-{name}");
            }

            await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light, Contrast = Contrast.NoPreference });
        }

        return faults;
    }

    private static async Task<List<string>> InOneLookAsync(IPage page, string screen)
    {
        var faults = Watched(page);
        foreach (var path in Places.All)
        {
            await page.VisitAsync(path);
            faults.AddRange(await page.FaultsAsync());
            await page.KeepAsync($"{Places.Name(path)}-{screen}");
        }

        return faults;
    }

    /// <summary>What goes wrong while the page is used, from now on.</summary>
    private static List<string> Watched(IPage page)
    {
        var faults = new List<string>();
        var home = new Uri(page.Url).Host;
        page.Console += (_, message) => { if (message.Type == "error") faults.Add($"{page.Url}: {message.Text}"); };
        page.PageError += (_, error) => faults.Add($"{page.Url}: {error}");
        page.Request += (_, request) => { if (new Uri(request.Url) is { Scheme: "http" or "https" } address && address.Host != home) faults.Add(request.Url); };
        return faults;
    }
}

using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>Every page at every size and in every look: measured, read by axe, and kept as a picture.</summary>
[Collection(typeof(DemoAppCollection))]
public sealed class LookTests(Chromium chromium, RunningApp app)
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
        var faults = new List<string>();
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
        var faults = new List<string>();
        foreach (var path in Places.All)
        {
            await page.VisitAsync(path);
            faults.AddRange(await page.FaultsAsync());
            await page.KeepAsync($"{Places.Name(path)}-{screen}");
        }

        return faults;
    }
}

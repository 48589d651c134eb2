using System.Collections.Concurrent;
using System.Net;
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
    /// <summary>What somebody may do on a page.</summary>
    private const string Presses = "main button, main form";

    private readonly ConcurrentDictionary<string, int> presses = [];
    private readonly ConcurrentDictionary<string, int> unsaid = [];

    [Fact]
    public async Task Page_Any_IsLargeEnoughAndReadsWellInEveryLook()
    {
        await using var tablet = await chromium.TabletAsync(app.Address);
        await using var office = await chromium.TabletAsync(app.Address);
        await using var desk = await chromium.DeskAsync(app.Address);
        var (henning, maren) = (await tablet.SignInAsync("henning", isShared: true), await office.SignInAsync("maren"));
        foreach (var page in new[] { henning, maren }) await page.ChoosePinAsync("27493"); // who stands at a shared station is chosen among those who have one
        var faults = await Task.WhenAll(
            InEveryLookAsync(henning, path => !Places.IsAdministered(path)), AsAdministratorAsync(maren, await desk.SignInAsync("maren")));

        Assert.True(Places.All.Count > 12);
        Assert.Empty(unsaid.Where(page => page.Value < presses[page.Key]).Select(page => $"{page.Key} does not say who may change something"));
        Assert.True(faults.All(found => found.Count == 0), string.Join('\n', faults.SelectMany(found => found)));
    }

    [Fact]
    public async Task Parts_InColoursForcedByTheDevice_StillShowWhatTheyMean()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        await page.EmulateMediaAsync(new() { ForcedColors = ForcedColors.Active });
        await page.VisitAsync("/parts");
        await page.KeepAsync("parts-tablet-forced");

        Task<string> StyleAsync(string part, string style) => page.Locator(part).First.EvaluateAsync<string>("(part, style) => getComputedStyle(part)[style]", style);
        Task<string> GroundAsync(string part) => StyleAsync(part, "backgroundColor");
        Assert.NotEqual(await GroundAsync(".limit-window"), await GroundAsync(".limit-mark"));
        Assert.NotEqual(await GroundAsync(".ribbon-done"), await GroundAsync(".ribbon-now"));
        Assert.NotEqual(await StyleAsync(".field:not(.field-wrong)", "borderLeftColor"), await StyleAsync(".field-wrong", "borderLeftColor"));
    }

    /// <summary>One visit a page: it is the same page whose colours and screen change.</summary>
    private async Task<List<string>> InEveryLookAsync(IPage page, Func<string, bool> isWanted)
    {
        var faults = Watched(page);
        var isDark = false;
        foreach (var path in Places.All.Where(isWanted))
        {
            await page.VisitAsync(path);
            presses[path] = await page.Locator(Presses).CountAsync();
            faults.AddRange(await page.FaultsAsync());
            faults.AddRange(await AxeFindings.AllAsync(page));
            await page.KeepAsync($"{Places.Name(path)}-tablet-light");
            isDark = !isDark; // more contrast in the light on every other page, in the dark on those between
            foreach (var (name, dark, more) in new[] { ("dark", true, false), ("contrast", isDark, true) })
            {
                await page.EmulateMediaAsync(new() { ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light, Contrast = more ? Contrast.More : Contrast.NoPreference });
                faults.AddRange((await AxeFindings.ContrastAsync(page)).Select(fault => $"{name}: {fault}"));
                await page.KeepAsync($"{Places.Name(path)}-tablet-{name}");
                if (path == "/") faults.AddRange((await page.NoticeFaultsAsync()).Select(fault => $"{name}: {fault}"));
            }

            await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light, Contrast = Contrast.NoPreference });
            foreach (var (name, width, height) in new[] { ("desk", 1440, 900), ("phone", 390, 844), ("small phone", 360, 740) })
            {
                await page.SetViewportSizeAsync(width, height);
                faults.AddRange((await page.FaultsAsync()).Select(fault => $"{name}: {fault}"));
                if (await page.EvaluateAsync<bool>("[...document.querySelectorAll('[data-testid=person]')].some(one => one.getBoundingClientRect().right > one.parentElement.getBoundingClientRect().right + 1)"))
                    faults.Add($"{name}: {path} cuts off who is named");
                if (width != 360) await page.KeepAsync($"{Places.Name(path)}-{name}");
            }

            await page.SetViewportSizeAsync(1180, 820);
        }

        return faults;
    }

    private async Task<List<string>> AsAdministratorAsync(IPage tablet, IPage desk)
    {
        var faults = await InEveryLookAsync(tablet, Places.IsAdministered);
        faults.AddRange(await ReadOnlyAsync(desk));
        return faults;
    }

    /// <summary>Where a page has something to press for somebody else, it says for whom.</summary>
    private async Task<List<string>> ReadOnlyAsync(IPage page)
    {
        var faults = Watched(page);
        foreach (var path in Places.All.Where(path => !Places.IsAdministered(path)))
        {
            await page.VisitAsync(path);
            faults.AddRange(await page.FaultsAsync());
            await page.KeepAsync($"{Places.Name(path)}-desk-reader");
            if (await page.Locator("[data-testid=read-only]").CountAsync() == 0) unsaid[path] = await page.Locator(Presses).CountAsync();
        }

        return faults;
    }

    /// <summary>What goes wrong while the page is used, from now on.</summary>
    private static List<string> Watched(IPage page)
    {
        var faults = new List<string>();
        var home = IPAddress.Loopback.ToString();
        page.Console += (_, message) => { if (message.Type == "error") faults.Add($"{page.Url}: {message.Text}"); };
        page.PageError += (_, error) => faults.Add($"{page.Url}: {error}");
        page.Request += (_, request) => { if (new Uri(request.Url) is { Scheme: "http" or "https" } address && address.Host != home) faults.Add(request.Url); };
        return faults;
    }
}

using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>Pictures of the pages, kept with the results of the run for people to look at.</summary>
internal static class Pictures
{
    private static readonly string Folder = Directory.CreateDirectory(
        Path.GetFullPath(Path.Combine(RunningApp.WebFolder, "..", "..", "TestResults", "pictures"))).FullName;

    /// <summary>A state that a story came to, on the tablet, light and dark, and at the desk: kept, measured and read by axe as any page is.</summary>
    public static async Task KeepStateAsync(this IPage page, string name)
    {
        await page.KeepAsync(name + "-tablet-light");
        var faults = new List<string>([.. await page.FaultsAsync(), .. await AxeFindings.AllAsync(page)]);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await page.KeepAsync(name + "-tablet-dark");
        faults.AddRange((await AxeFindings.ContrastAsync(page)).Select(fault => $"dark: {fault}"));
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        var tablet = page.ViewportSize!;
        await page.SetViewportSizeAsync(1440, 900);
        await page.KeepAsync(name + "-desk");
        faults.AddRange((await page.FaultsAsync()).Select(fault => $"desk: {fault}"));
        await page.SetViewportSizeAsync(tablet.Width, tablet.Height);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>A part of a page.</summary>
    public static Task KeepAsync(this IPage page, string name, string part) =>
        page.Locator(part).ScreenshotAsync(new() { Path = Path.Combine(Folder, name + ".jpg"), Type = ScreenshotType.Jpeg, Quality = 85, Animations = ScreenshotAnimations.Disabled });

    public static Task KeepAsync(this IPage page, string name) =>
        page.ScreenshotAsync(new() { Path = Path.Combine(Folder, name + ".jpg"), Type = ScreenshotType.Jpeg, Quality = 85, FullPage = true, Animations = ScreenshotAnimations.Disabled });
}

using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>Pictures of the pages, kept with the results of the run for people to look at.</summary>
internal static class Pictures
{
    private static readonly string Folder = Directory.CreateDirectory(
        Path.GetFullPath(Path.Combine(RunningApp.WebFolder, "..", "..", "TestResults", "pictures"))).FullName;

    /// <summary>A state that a story came to: on the tablet, light and dark, and at the desk.</summary>
    public static async Task KeepStateAsync(this IPage page, string name)
    {
        await page.KeepAsync(name + "-tablet-light");
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await page.KeepAsync(name + "-tablet-dark");
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        var tablet = page.ViewportSize!;
        await page.SetViewportSizeAsync(1440, 900);
        await page.KeepAsync(name + "-desk");
        await page.SetViewportSizeAsync(tablet.Width, tablet.Height);
    }

    public static Task KeepAsync(this IPage page, string name) =>
        page.ScreenshotAsync(new() { Path = Path.Combine(Folder, name + ".jpg"), Type = ScreenshotType.Jpeg, Quality = 85, FullPage = true, Animations = ScreenshotAnimations.Disabled });
}

using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>Pictures of the pages, kept with the results of the run for people to look at.</summary>
internal static class Pictures
{
    private static readonly string Folder = Directory.CreateDirectory(
        Path.GetFullPath(Path.Combine(RunningApp.WebFolder, "..", "..", "TestResults", "pictures"))).FullName;

    public static Task KeepAsync(this IPage page, string name) =>
        page.ScreenshotAsync(new() { Path = Path.Combine(Folder, name + ".png"), FullPage = true, Animations = ScreenshotAnimations.Disabled });
}

using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Running;

/// <summary>How a demo person moves about.</summary>
internal static class Demo
{
    private const string Password = "ottersfehn-demo";

    public static async Task<IPage> SignInAsync(this IBrowserContext context, string name)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync("/sign-in");
        await page.FillAsync("input[name=name]", name);
        await page.FillAsync("input[name=password]", Password);
        await page.ClickAsync("button[type=submit]");
        await page.WaitForSelectorAsync("[data-state=ready]");
        return page;
    }

    /// <summary>Opens a page and waits until what it shows has been read.</summary>
    public static async Task OpenAsync(this IPage page, string path)
    {
        await page.GotoAsync(path);
        await page.WaitForSelectorAsync("[data-state=ready]");
    }
}

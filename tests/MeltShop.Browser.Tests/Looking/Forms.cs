using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>A form that a press has opened.</summary>
internal static class Forms
{
    private static readonly (string Name, int Width, int Height)[] Screens = [("desk", 1440, 900), ("small phone", 360, 740)];

    /// <summary>Opens it by its first press; measured on the tablet, at the desk and on a phone, read by axe in both themes, and kept as a picture.</summary>
    public static async Task<List<string>> FormFaultsAsync(this IPage page, string form)
    {
        try
        {
            await page.Locator($"main [data-opens={form}]:enabled:visible").First.TapAsync();
            await page.WaitForSelectorAsync($"main [data-testid={form}]");
        }
        catch (TimeoutException late)
        {
            return [$"{form} does not come: {late.Message}"];
        }

        var faults = new List<string>([.. await page.FaultsAsync(), .. await AxeFindings.InBothThemesAsync(page, $"[data-testid={form}]")]);
        await page.KeepAsync($"form-{form}-tablet", $"main [data-testid={form}]");
        foreach (var (name, width, height) in Screens)
        {
            await page.SetViewportSizeAsync(width, height);
            faults.AddRange((await page.FaultsAsync()).Select(fault => $"{name}: {fault}"));
        }

        await page.SetViewportSizeAsync(1180, 820);
        if (!page.OpenForms().Any(open => open.Split('.')[0] == form)) faults.Add($"{page.Url} does not name it");
        return [.. faults.Select(fault => $"{form}: {fault}")];
    }

    /// <summary>Loads the page anew into the same place: the forms that its address names have to come back.</summary>
    public static async Task<List<string>> ReopenedFaultsAsync(this IPage page)
    {
        var faults = new List<string>();
        var open = page.OpenForms();
        await page.ReloadAsync();
        foreach (var form in open)
        {
            try
            {
                await page.WaitForSelectorAsync($"main [data-testid={form.Split('.')[0]}]");
            }
            catch (TimeoutException)
            {
                faults.Add($"{form} is lost when the page is loaded anew");
            }
        }

        return faults;
    }

    private static List<string> OpenForms(this IPage page) =>
    [
        .. new Uri(page.Url).Query.TrimStart('?').Split('&').Where(part => part.StartsWith("open=", StringComparison.Ordinal))
            .Select(part => Uri.UnescapeDataString(part["open=".Length..].Replace('+', ' '))),
    ];
}

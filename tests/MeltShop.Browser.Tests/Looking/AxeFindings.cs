using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>
/// What axe finds on a page that is serious or critical. Its script is run in the page itself: the package's own way opens another page
/// for each answer, to gather what frames found, and ours have none.
/// </summary>
internal static class AxeFindings
{
    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    /// <summary>All rules; the colours are those of the look that is on.</summary>
    public static async Task<IReadOnlyList<string>> AllAsync(IPage page, string part = "html")
    {
        await page.EvaluateAsync(Script);
        return await FindAsync(page, part);
    }

    /// <summary>What another look of the same page can change: contrast. After <see cref="AllAsync"/>.</summary>
    public static Task<string[]> ContrastAsync(IPage page) => FindAsync(page, "html", "color-contrast");

    /// <summary>Both themes of a page that is light and stays so, or of a part of it: all rules in the light, in the dark what it can change.</summary>
    public static async Task<IReadOnlyList<string>> InBothThemesAsync(IPage page, string part = "html")
    {
        var light = await AllAsync(page, part);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        var dark = await FindAsync(page, part, "color-contrast");
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        return [.. light, .. dark.Select(fault => $"dark: {fault}")];
    }

    private static Task<string[]> FindAsync(IPage page, string part, params string[] rules) => page.EvaluateAsync<string[]>(
        """
        async ([part, ...rules]) => {
          const found = await axe.run(part, { resultTypes: ['violations'], ...(rules.length > 0 && { runOnly: rules }) });
          return found.violations.filter(violation => ['serious', 'critical'].includes(violation.impact)).flatMap(violation =>
            violation.nodes.map(node => `${location.pathname} ${violation.id}: ${node.html} ${node.any.map(check => check.message).join(' ')}`));
        }
        """, new[] { part }.Concat(rules));
}

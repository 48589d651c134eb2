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
    public static async Task<IReadOnlyList<string>> AllAsync(IPage page)
    {
        await page.EvaluateAsync(Script);
        return await FindAsync(page);
    }

    /// <summary>What another look of the same page can change: contrast. After <see cref="AllAsync"/>.</summary>
    public static Task<string[]> ContrastAsync(IPage page) => FindAsync(page, "color-contrast");

    /// <summary>Both themes of a page that is light and stays so: all rules in the light, in the dark what it can change.</summary>
    public static async Task<IReadOnlyList<string>> InBothThemesAsync(IPage page)
    {
        var light = await AllAsync(page);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        var dark = await ContrastAsync(page);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        return [.. light, .. dark.Select(fault => $"dark: {fault}")];
    }

    private static Task<string[]> FindAsync(IPage page, params string[] rules) => page.EvaluateAsync<string[]>(
        """
        async rules => {
          const found = await axe.run(document, { resultTypes: ['violations'], ...(rules.length > 0 && { runOnly: rules }) });
          return found.violations.filter(violation => ['serious', 'critical'].includes(violation.impact)).flatMap(violation =>
            violation.nodes.map(node => `${location.pathname} ${violation.id}: ${node.html} ${node.any.map(check => check.message).join(' ')}`));
        }
        """, rules);
}

using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>What axe finds on a page that is serious or critical.</summary>
internal static class AxeFindings
{
    /// <summary>All rules; the colours are those of the look that is on.</summary>
    public static Task<IReadOnlyList<string>> AllAsync(IPage page) => FindAsync(page, new() { ResultTypes = [ResultType.Violations] });

    /// <summary>What another look of the same page can change: contrast.</summary>
    public static Task<IReadOnlyList<string>> ContrastAsync(IPage page) =>
        FindAsync(page, new() { ResultTypes = [ResultType.Violations], RunOnly = RunOnlyOptions.Rules("color-contrast") });

    private static async Task<IReadOnlyList<string>> FindAsync(IPage page, AxeRunOptions options)
    {
        var result = await page.RunAxe(options);
        return
        [
            .. from violation in result.Violations
               where violation.Impact is "serious" or "critical"
               from node in violation.Nodes
               select $"{page.Url} {violation.Id}: {node.Html} {string.Join(" ", node.Any.Select(check => check.Message))}",
        ];
    }
}

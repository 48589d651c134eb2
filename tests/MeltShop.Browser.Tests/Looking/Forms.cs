using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>A form that a press has opened.</summary>
internal static class Forms
{
    /// <summary>As Back comes into the page; answers how many presses follow it, once something of it is drawn.</summary>
    private const string ComeBack = """
        () => new Promise((done) => {
          let presses = 0;
          addEventListener("click", () => presses++, true);
          dispatchEvent(new PopStateEvent("popstate"));
          document.querySelector("main").append(document.createElement("i"));
          setTimeout(() => done(presses));
        })
        """;

    private static readonly (string Name, int Width, int Height)[] Screens = [("desk", 1440, 900), ("small phone", 360, 740)];

    /// <summary>Opens it by its first press; measured on the tablet, at the desk and on a phone, read by axe in both themes, and kept as a picture.</summary>
    public static async Task<List<string>> FormFaultsAsync(this IPage page, string form)
    {
        bool isAsked;
        try
        {
            var press = page.Locator($"main [data-opens={form}]:enabled:visible").First;
            isAsked = await press.GetAttributeAsync("data-asks") is not null;
            await page.PressUntilAsync($"main [data-opens={form}]:enabled:visible", $"main [data-testid={form}]");
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
        if (page.OpenForms().Any(open => open.Split('.')[0] == form) == isAsked) faults.Add(isAsked ? $"{page.Url} names what is asked before something that cannot be undone" : $"{page.Url} does not name it");
        return [.. faults.Select(fault => $"{form}: {fault}")];
    }

    /// <summary>Loads the page anew into the same place: the forms that its address names have to come back, each once, and none is pressed shut when somebody comes back to it.</summary>
    public static async Task<List<string>> ReopenedFaultsAsync(this IPage page)
    {
        var faults = new List<string>();
        var open = page.OpenForms();
        if (open.Count == 0) return faults; // nothing but what is asked before something that cannot be undone
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

        if (await page.EvaluateAsync<int>(ComeBack) is > 0 and var presses) faults.Add($"{page.Url}: {presses} presses of what is open already");
        if (!open.Order().SequenceEqual(page.OpenForms().Order())) faults.Add($"{page.Url} does not name {string.Join(", ", open)}");
        foreach (var form in open.GroupBy(name => name.Split('.')[0]))
        {
            if (await page.Locator($"main [data-testid={form.Key}]").CountAsync() != form.Count()) faults.Add($"{form.Key} does not stand there {form.Count()} times");
        }

        return faults;
    }

    private static List<string> OpenForms(this IPage page) =>
    [
        .. new Uri(page.Url).Query.TrimStart('?').Split('&').Where(part => part.StartsWith("open=", StringComparison.Ordinal))
            .Select(part => Uri.UnescapeDataString(part["open=".Length..].Replace('+', ' '))),
    ];
}

using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Running;

/// <summary>How a demo person moves about.</summary>
internal static class Demo
{
    public const string Password = "ottersfehn-demo";

    /// <summary>A page of this person, who has signed in. It is the page after the form, or a blank one where they went through the form before.</summary>
    public static async Task<IPage> SignInAsync(this IBrowserContext context, string name, bool isShared = false)
    {
        var page = await context.NewPageAsync();
        if (!isShared && await SignedIn.TakeOverAsync(context, name)) return page;
        await page.GotoAsync("/sign-in");
        await page.FillAsync("input[name=name]", name);
        await page.FillAsync("input[name=password]", Password);
        if (isShared) await page.CheckAsync("input[name=shared]");
        await page.ClickAsync("button[type=submit]");
        await page.WaitForSelectorAsync("[data-state=ready]");
        if (!isShared) await SignedIn.RememberAsync(context, name);
        return page;
    }

    /// <summary>How long a page of this browser hears no answer of its circuit, s, before it believes no touch; before the page is opened.</summary>
    public static Task SilentAfterAsync(this IBrowserContext context, double seconds) => context.AddInitScriptAsync(
        FormattableString.Invariant($"addEventListener('readystatechange', () => document.documentElement.dataset.silentAfter = {seconds}, true);"));

    /// <summary>Gives the person of this page a PIN, so that a shared station can name them.</summary>
    public static async Task ChoosePinAsync(this IPage page, string pin)
    {
        await page.GotoAsync("/me");
        await page.FillAsync("#password", Password);
        await page.FillAsync("#pin", pin);
        await page.ClickAsync("[data-testid=pin-form] button[type=submit]");
        await page.WaitForSelectorAsync("[data-testid=done]");
    }

    /// <summary>Opens a page and waits until what it shows has been read.</summary>
    public static async Task OpenAsync(this IPage page, string path)
    {
        await page.GotoAsync(path);
        await page.WaitForSelectorAsync("[data-state=ready]");
    }

    /// <summary>
    /// Waits until the page is at this path with its query; <c>#</c> is a number, <c>*</c> is anything. The driver looks again and again:
    /// a wait for the navigation itself sleeps on where it has just happened on a busy machine.
    /// </summary>
    public static Task IsAtAsync(this IPage page, string path)
    {
        var pattern = Regex.Escape(path).Replace("\\#", "\\d+", StringComparison.Ordinal).Replace("\\*", ".*", StringComparison.Ordinal);
        return Assertions.Expect(page).ToHaveURLAsync(new Regex($"^https?://[^/]+{pattern}$"));
    }

    /// <summary>Starts a heat and answers its page's path.</summary>
    public static async Task<string> StartHeatAsync(this IPage page, string furnace, int kg = 5000, string grade = "EN-GJS-500-7")
    {
        await page.OpenAsync($"/charge?furnace={furnace}&grade={grade}&kg={kg}");
        await page.WaitForSelectorAsync("[data-testid=in-plan]");
        await page.StartChargeAsync();
        return new Uri(page.Url).AbsolutePath;
    }

    /// <summary>Starts a heat from the plan that is shown, and waits for its weighing card.</summary>
    public static async Task StartChargeAsync(this IPage page)
    {
        await page.PressUntilAsync("[data-opens=start-ask]", "[data-testid=start-ask]");
        await page.PressUntilAsync("[data-testid=start-ask] .press-primary", "[data-testid=weigh-form]");
        await page.IsAtAsync("/heats/#");
    }

    /// <summary>Opens the page of a heat and there the entry of a coin.</summary>
    public static async Task OpenSampleAsync(this IPage page, string heat)
    {
        await page.OpenAsync(heat);
        await page.OpenSampleAsync();
    }

    /// <summary>Opens the entry of a coin on the page of a heat that is open.</summary>
    public static Task OpenSampleAsync(this IPage page) => page.OpenFormAsync("[data-testid=samples] [data-opens=sample-form]", "[data-testid=sample-form]");

    /// <summary>Types into a cell or field and leaves it.</summary>
    public static async Task EnterAsync(this IPage page, string selector, string text)
    {
        await page.FillAsync(selector, text);
        await page.Locator(selector).BlurAsync();
    }

    /// <summary>Nobody has heard from the tablet for so long that its page is loaded anew into the same place.</summary>
    public static async Task BeAwayAsync(this IPage page)
    {
        await page.EvaluateAsync("(() => { document.documentElement.dataset.before = ''; const now = Date.now; Date.now = () => now() + 170_000; })()");
        await page.WaitForSelectorAsync("html:not([data-before]):not([data-circuit]) [data-state=ready]");
    }

    /// <summary>Opens a page in whatever state it is, once it has read what there is to read; plain documents have nothing to read.</summary>
    public static async Task VisitAsync(this IPage page, string path)
    {
        await page.GotoAsync(path);
        await page.WaitForSelectorAsync("main h1, [data-testid=state]:not([data-state=loading])");
        if (!path.StartsWith("/parts", StringComparison.Ordinal))
            await Assertions.Expect(page.Locator("[data-state=loading]")).ToHaveCountAsync(0);
    }
}

using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Running;

/// <summary>Presses as a person makes them: a page that is drawn anew under the finger takes none, and a person sees that and presses again.</summary>
internal static class Presses
{
    /// <summary>Milliseconds after which a press is made again.</summary>
    private const float Again = 15_000;

    private const int Most = 6;

    /// <summary>Presses until something comes. What is there already needs no press.</summary>
    public static Task PressUntilAsync(this IPage page, string press, string comes, bool isTwice = false) =>
        PressAsync(page.Locator(press).First, page.Locator(comes).First, WaitForSelectorState.Visible, isTwice);

    /// <summary>Presses until something that is there has gone.</summary>
    public static Task PressUntilGoneAsync(this IPage page, string press, string goes) =>
        PressAsync(page.Locator(press).First, page.Locator(goes).First, WaitForSelectorState.Detached, isTwice: false);

    /// <summary>
    /// Presses until a form is open and has given the keyboard to its first field: the program sends that after the form, and what is typed
    /// elsewhere in that moment would go there.
    /// </summary>
    public static async Task OpenFormAsync(this IPage page, string press, string form)
    {
        await page.PressUntilAsync(press, form);
        await page.HasFocusAsync(form);
    }

    public static Task HasFocusAsync(this IPage page, string form) => page.WaitForSelectorAsync($"{form} :focus");

    /// <summary>Presses the press of an entry's form until it has taken what stands in it: that it says at once, whatever becomes of the entry.</summary>
    public static Task HandInAsync(this IPage page, string form) =>
        page.PressUntilAsync($"{form} button[type=submit]", $"{form}:is([data-waiting], [data-done], [data-freed])");

    /// <summary>Unfolds what is not yet at the server, which is drawn anew whenever something of it changes.</summary>
    public static Task OpenQueueAsync(this IPage page) => page.PressUntilAsync("#entry-queue summary", "#entry-queue[open] li");

    /// <summary>Waits until the circuit has answered a question that was asked from now on: what was said to it before is heard, and what it said before has come.</summary>
    public static Task HeardAsync(this IPage page) => page.EvaluateAsync(
        """
        async () => {
          const { question, isOver } = await import("/entry/typed.js");
          const asked = question();
          for (let looks = 0; !isOver(asked); looks++) {
            if (looks > 10_000) throw new Error("The circuit does not answer.");
            await new Promise((done) => setTimeout(done, 20));
          }
        }
        """);

    private static async Task PressAsync(ILocator press, ILocator what, WaitForSelectorState state, bool isTwice)
    {
        for (var presses = 1; !await IsSoAsync(); presses++)
        {
            try
            {
                if (isTwice) await press.DblClickAsync(new() { Timeout = Again });
                else await press.TapAsync(new() { Timeout = Again });
                await what.WaitForAsync(new() { State = state, Timeout = Again });
                return;
            }
            catch (TimeoutException) when (presses < Most)
            {
                // once more
            }
        }

        async Task<bool> IsSoAsync() => state is WaitForSelectorState.Visible ? await what.IsVisibleAsync() : await what.CountAsync() == 0;
    }
}

using MeltShop.Browser.Tests.Heats;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Ladles;

/// <summary>What is done at a ladle of ductile iron on a tablet, as the stories of this folder do it.</summary>
internal static class LadleSteps
{
    private static readonly Dictionary<string, string> Bath =
        new() { ["C"] = "3,62", ["Si"] = "1,40", ["Mn"] = "0,30", ["P"] = "0,025", ["S"] = "0,012", ["Cu"] = "0,30" };

    private static readonly Dictionary<string, string> LastMetal =
        new() { ["C"] = "3.50", ["Si"] = "2.50", ["Mn"] = "0.30", ["P"] = "0.025", ["S"] = "0.009", ["Cu"] = "0.30" };

    /// <summary>Starts a heat, weighs in and takes its bath sample; answers its page's path.</summary>
    public static async Task<string> SampledHeatAsync(this IPage page)
    {
        var heat = await page.StartHeatAsync("furnace-1");
        await page.WeighInAsync("2500");
        await page.OpenSampleAsync();
        foreach (var cell in await page.Locator("[data-testid=sample-form] [data-cell^='0.']:visible").AllAsync())
        {
            var element = (await cell.GetAttributeAsync("data-cell"))!.Split('.')[1];
            await cell.FillAsync(Bath.GetValueOrDefault(element, "0.005"));
        }

        await page.PressUntilAsync("[data-testid=sample-form] button[type=submit]", "[data-testid=sample] .limit");
        return heat;
    }

    /// <summary>Sends a coin on its way, on the page of its heat.</summary>
    public static async Task SendCoinAsync(this IPage page)
    {
        await page.OpenFormAsync("[data-testid=send-coin]", "[data-testid=coin-form]");
        await page.EnterAsync("[data-testid=coin-form] [data-field=coinNumber] input", "C 17");
        await page.PressUntilAsync("[data-testid=coin-form] button[type=submit]", "[data-opens=lost-form]");
    }

    /// <summary>Loads the pocket for 800 kg and stays on the page of the ladle.</summary>
    public static async Task PrepareLadleAsync(this IPage page, string heat)
    {
        await page.OpenAsync(heat + "/ladle");
        await page.EnterAsync("[data-field=plannedKg] input", "800");
        await page.EnterAsync("[data-field=temperatureC] input", "1490");
        await page.WaitForSelectorAsync("[data-testid=stop-weight]");
        foreach (var check in await page.Locator("[data-check]").AllAsync()) await check.CheckAsync();
        await page.PressUntilAsync("[data-testid=load-pocket]", "[data-testid=tap-form]", isTwice: true); // pressed twice, loaded once
        await page.IsAtAsync("/ladles/#");
    }

    /// <summary>The prepared ladle, tapped with so much and reacted.</summary>
    public static async Task TapAndReactAsync(this IPage page, string kg)
    {
        await page.EnterAsync("[data-testid=tap-form] [data-field=kg] input", kg);
        await page.PressUntilAsync("[data-testid=tap-form] button[type=submit]", "[data-testid=reaction-ended]", isTwice: true); // pressed twice, tapped once
        await page.PressUntilAsync("[data-testid=reaction-ended]", "[data-ladle-state=Pouring]");
    }

    /// <summary>Ticks the next mould off and waits until it stands there.</summary>
    public static async Task MouldAsync(this IPage page, string label, string kg)
    {
        await Assertions.Expect(page.Locator("[data-testid=mould-form] [data-field=label] input")).ToHaveValueAsync(label);
        await page.EnterAsync("[data-testid=mould-form] [data-field=kg] input", kg);
        await page.EnterAsync("[data-testid=mould-form] [data-field=pourSeconds] input", "12");
        await page.PressUntilAsync("[data-testid=mould-poured]", $"[data-mould='{label}']");
        await page.KeptAsync(label);
    }

    /// <summary>The form says so once it was answered; only then is it of the next mould.</summary>
    public static Task KeptAsync(this IPage page, string label) => Assertions.Expect(page.Locator("[data-testid=mould-kept]")).ToContainTextAsync($"Mould {label} recorded");

    /// <summary>A last-metal sample inside every window but for the magnesium given, on the page of its ladle.</summary>
    public static async Task LastMetalAsync(this IPage page, string magnesium)
    {
        await page.WaitForSelectorAsync("[data-testid=last-metal-form] [data-cell]");
        foreach (var cell in await page.Locator("[data-testid=last-metal-form] [data-cell^='0.']:visible").AllAsync())
        {
            var element = (await cell.GetAttributeAsync("data-cell"))!.Split('.')[1];
            await cell.FillAsync(element == "Mg" ? magnesium : LastMetal.GetValueOrDefault(element, "0.005"));
        }

        await page.PressUntilAsync("[data-testid=save-last-metal]", "[data-ladle-state=Held]");
    }

    /// <summary>Releases the castings of the ladle with the password.</summary>
    public static async Task ReleaseAsync(this IPage page)
    {
        await page.PressUntilAsync("[data-testid=release]", "[data-testid=release-yes]");
        await page.EnterAsync("[data-testid=decision] [data-field=password] input", Demo.Password);
        await page.PressUntilAsync("[data-testid=release-yes]", "[data-ladle-state=Released]");
    }
}

using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Heats;

/// <summary>How something is weighed in on the card of a heat, a step at a time: what was pressed has to have come back before the next is typed.</summary>
internal static class WeighingSteps
{
    private const string Card = "[data-testid=weighing]";
    private const string Form = "[data-testid=weigh-form]";

    /// <summary>Chooses a material by its row and weighs in so much of it.</summary>
    public static async Task WeighInAsync(this IPage page, string material, string kg)
    {
        var row = $"tr[data-material='{material}']";
        await page.PressUntilAsync($"{row} .row-press", $"{Card}:not(:has([data-testid=weighed])) {row}.chosen");
        await page.WeighInAsync(kg, page.Locator(row));
    }

    /// <summary>Weighs in so much of what is offered.</summary>
    public static Task WeighInAsync(this IPage page, string kg) => page.WeighInAsync(kg, page.Locator($"{Card} tr.chosen"));

    /// <summary>What a row asks for, without its unit.</summary>
    public static async Task<string> TargetAsync(this IPage page, string material) =>
        (await page.Locator($"tr[data-material='{material}'] td[data-heading=Target]").InnerTextAsync()).Split('\u00a0')[0];

    /// <summary>Until the card knows what is in, and what the rest is to be.</summary>
    private static async Task WeighInAsync(this IPage page, string kg, ILocator row)
    {
        var weighed = page.Locator($"tr[data-material='{await row.GetAttributeAsync("data-material")}'] td[data-heading=Weighed]");
        var before = await weighed.InnerTextAsync();
        await page.EnterAsync($"{Form} [data-field=kg] input", kg);
        await page.PressUntilAsync($"{Form} button[type=submit]", $"{Card} [data-testid=weighed]");
        await Assertions.Expect(weighed).Not.ToHaveTextAsync(before);
        await page.WaitForSelectorAsync($"{Card} [data-testid=weighings][aria-busy=false]");
    }
}

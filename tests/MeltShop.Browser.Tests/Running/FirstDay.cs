using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Running;

/// <summary>The first day of a shop without the demo: from the code that the program printed to the first plan.</summary>
internal static partial class FirstDay
{
    /// <summary>Becomes the first administrator, who holds every role, and signs in.</summary>
    public static async Task<IPage> FirstAdministratorAsync(this IBrowserContext context, RunningApp app)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync("/sign-in");
        await page.TapAsync("a[href='/first-administrator']");
        await page.WaitForSelectorAsync("#code");
        while (!Code().IsMatch(app.Log)) await Task.Delay(TimeSpan.FromMilliseconds(100), TestContext.Current.CancellationToken); // what was printed comes on another way
        foreach (var (field, text) in new[] { ("code", Code().Match(app.Log).Groups[1].Value), ("displayName", "Anna Example"), ("name", "anna"), ("password", Demo.Password) })
            await page.FillAsync("#" + field, text);
        await page.ClickAsync("button[type=submit]");
        await page.IsAtAsync("/sign-in*");
        await page.FillAsync("input[name=password]", Demo.Password);
        await page.ClickAsync("button[type=submit]");
        await page.WaitForSelectorAsync("[data-testid=state]:not([data-state=loading])");
        return page;
    }

    /// <summary>Sets the shop up, page by page as the list of what is missing leads, until a plan stands on the page of the charge.</summary>
    public static async Task SetUpAsync(this IPage page)
    {
        await page.GotoAsync("/");
        await page.PressUntilAsync("[data-testid=site-missing] a", "[data-testid=site-form]");
        await page.FillInAsync(("name", "Test foundry Talbrück"), ("code", "TB"), ("currency", "EUR"));
        await page.ChooseAsync(("timeZone", "Europe/Berlin"), ("mass", "Kilogram"), ("temperature", "Celsius"));
        await page.PressUntilAsync("[data-testid=site-form] button[type=submit]", "[data-testid=site]");

        await page.OpenAsync("/people");
        await page.OpenFormAsync("[data-testid=add-person]", "[data-testid=person-form]");
        await page.FillInAsync(("displayName", "Ben Example"), ("userName", "ben"));
        await page.TapAsync("[data-testid=make-password]");
        await page.CheckAsync("[data-role=melter]");
        await page.PressUntilAsync("[data-testid=person-form] button[type=submit]", "[data-testid=given]");

        await page.StepAsync("Furnace");
        await page.OpenFormAsync("[data-testid=add-furnace]", "[data-testid=furnace-form]");
        await page.FillInAsync(("code", "F1"), ("name", "Furnace 1"), ("capacityKg", "3000"), ("powerKw", "1800"));
        await page.PressUntilAsync("[data-testid=furnace-form] button[type=submit]", "[data-furnace=F1]");

        await page.StepAsync("Grade");
        await page.FillInAsync(("code", "EN-GJL-250"), ("source", "invented for a test"));
        await page.ChooseAsync(("family", "Grey"));
        foreach (var (element, least, most) in new[] { ("C", "3.2", "3.5"), ("Si", "1.8", "2,2") })
        {
            await page.EnterAsync($"[data-stage=Furnace] [data-row={element}] [data-field$='.least'] input", least);
            await page.EnterAsync($"[data-stage=Furnace] [data-row={element}] [data-field$='.most'] input", most);
        }

        await page.PressUntilGoneAsync("[data-testid=new-grade] .press-primary", "[data-testid=new-grade]");
        await page.IsAtAsync("/grades/#");

        await page.StepAsync("Material");
        await page.FillInAsync(("code", "returns"), ("name", "Own returns"), ("pricePerTonne", "280"), ("metallicYieldPercent", "98"), ("source", "invented for a test"));
        await page.ChooseAsync(("kind", "Returns"), ("sourceKind", "memory"));
        await page.OpenFormAsync(".analysis-row + p + .presses button", ".analysis-row + .analysis-row");
        foreach (var (row, element, percent) in new[] { (0, "C", "3.4"), (1, "Si", "2.0") })
        {
            var fields = page.Locator(".analysis-row").Nth(row);
            await fields.Locator("[data-field$='.element'] input").FillAsync(element);
            await fields.Locator("[data-field$='.percent'] input").FillAsync(percent);
        }

        await page.PressUntilGoneAsync("[data-testid=new-material] .press-primary", "[data-testid=new-material]");
        await page.IsAtAsync("/yard/#");

        await page.GotoAsync("/charge?furnace=F1&grade=EN-GJL-250&kg=2000");
        await page.WaitForSelectorAsync("[data-testid=in-plan]");
        await page.OpenAsync("/shop");
        await Assertions.Expect(page.Locator("[data-step]")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("[data-step=Ladle]")).ToBeVisibleAsync();
    }

    private static async Task StepAsync(this IPage page, string step)
    {
        await page.OpenAsync("/shop");
        await page.PressUntilGoneAsync($"[data-step={step}] a", "[data-testid=first-steps]");
        await Assertions.Expect(page.Locator("[data-state=loading]")).ToHaveCountAsync(0);
    }

    private static async Task FillInAsync(this IPage page, params (string Field, string Text)[] fields)
    {
        foreach (var (field, text) in fields) await page.EnterAsync($"[data-field={field}] input", text);
    }

    private static async Task ChooseAsync(this IPage page, params (string Field, string Choice)[] fields)
    {
        foreach (var (field, choice) in fields) await page.SelectOptionAsync($"[data-field={field}] select", choice);
    }

    [GeneratedRegex("enter the code ([A-Z0-9]+)")]
    private static partial Regex Code();
}

using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Charge;

/// <summary>What a metallurgist changes on the charge page of the demo foundry, and what the plan does then.</summary>
[Collection<DemoAppCollection>]
public sealed class ChargeChangesTests(Chromium chromium, RunningApp app)
{
    private const string Chosen = "/charge?furnace=furnace-1&grade=EN-GJS-500-7&kg=5000";

    [Fact]
    public async Task Price_Raised_TakesTheMaterialOutOfThePlanAndBackAgain()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await PlannedAsync(context);
        var before = await PlanAsync(page);
        var greatest = await page.Locator("[data-testid=in-plan] tr[data-material]").First.GetAttributeAsync("data-material");

        await page.PressUntilAsync($"tr[data-material='{greatest}'] button", $"[data-field='materials.{greatest}.pricePerTonne']");
        await TypeAsync(page, $"materials.{greatest}.pricePerTonne", "9000");
        await Assertions.Expect(page.Locator($"[data-testid=left-out] tr[data-material='{greatest}']")).ToContainTextAsync("would come in at");
        Assert.NotEqual(before, await PlanAsync(page));

        await TypeAsync(page, $"materials.{greatest}.pricePerTonne", "");
        await Assertions.Expect(page.Locator($"[data-testid=in-plan] tr[data-material='{greatest}']")).ToBeVisibleAsync();
        Assert.Equal(before, await PlanAsync(page));
    }

    [Fact]
    public async Task Limit_Raised_MovesThePlanToIt()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await PlannedAsync(context);
        var before = await PlanAsync(page);

        await page.PressUntilAsync("[data-limit=Si] button.press", "[data-field='limits.Si.least']");
        await TypeAsync(page, "limits.Si.least", "1,45");
        await Assertions.Expect(page.Locator("[data-limit=Si][data-binding=Min]")).ToContainTextAsync("1.45");
        Assert.NotEqual(before, await PlanAsync(page));
    }

    [Fact]
    public async Task Target_Impossible_NamesTheClashShowsNoPlanAndIsMended()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await PlannedAsync(context);
        var before = await PlanAsync(page);

        await page.PressUntilAsync("[data-limit=Si] button.press", "[data-field='limits.Si.least']");
        await TypeAsync(page, "limits.Si.least", "0");
        await TypeAsync(page, "limits.Si.most", "0.03");
        await Assertions.Expect(page.Locator("[data-testid=infeasible] [data-clash=Si]")).ToContainTextAsync("most 0.03 % and a margin of");
        await Assertions.Expect(page.Locator("[data-limit=Si][data-clashes=true]")).ToBeVisibleAsync();
        await page.KeepStateAsync("charge-clash");
        await Assertions.Expect(page.Locator("[data-testid=in-plan]")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("[data-testid=totals]")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("button", new() { HasText = "Start the heat" })).ToHaveCountAsync(0);

        await page.PressUntilGoneAsync("button:has-text('Back to what the grade says')", "[data-testid=infeasible]");
        await Assertions.Expect(page.Locator(".limit-row[data-limit=Si][data-binding]")).ToBeVisibleAsync();
        Assert.Equal(before, await PlanAsync(page));
    }

    private static async Task<IPage> PlannedAsync(IBrowserContext context)
    {
        var page = await context.SignInAsync("henning");
        await page.OpenAsync(Chosen);
        await WaitForPlanAsync(page);
        return page;
    }

    private static Task WaitForPlanAsync(IPage page) =>
        Assertions.Expect(page.Locator("[data-testid=plan-age][data-current=true]")).ToBeVisibleAsync();

    private static async Task TypeAsync(IPage page, string path, string text)
    {
        var input = page.Locator($"[data-field='{path}'] input");
        await input.FillAsync(text);
        await input.BlurAsync();
    }

    /// <summary>What it costs and what is weighed in, as the page prints it.</summary>
    private static async Task<string> PlanAsync(IPage page)
    {
        await WaitForPlanAsync(page);
        return await page.EvaluateAsync<string>(
            """
            [document.querySelector('[data-testid=cost-per-tonne]').textContent,
             ...[...document.querySelectorAll('[data-testid=in-plan] tr[data-material]')].map(row => `${row.dataset.material} ${row.querySelector('td').textContent}`)].join('; ')
            """);
    }
}

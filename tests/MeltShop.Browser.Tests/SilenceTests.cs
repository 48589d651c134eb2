using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>What is typed in the moment between the end of a connection and its being noticed.</summary>
[Collection(typeof(DemoAppCollection))]
public sealed class SilenceTests(Chromium chromium, RunningApp app)
{
    private const string Search = "[data-field=longChoice] .narrow-choices";

    [Fact]
    public async Task Text_TypedBeforeASilenceWasNoticed_IsHeardOnceTheCircuitIsBack()
    {
        const string cell = ":nth-match([data-cell='1.C'], 1)";
        await using var cable = new Cable(app.Address);
        await using var context = await chromium.TabletAsync(cable.Address);
        var page = await context.SignInAsync("henning");
        await page.VisitAsync("/parts");
        var picker = page.Locator("[data-field=longChoice] select");
        await picker.SelectOptionAsync("7");
        await page.EnterAsync(":nth-match([data-cell='0.C'], 1)", "3.61");
        await Assertions.Expect(page.Locator("[data-testid=heard]")).ToHaveTextAsync("3.61");

        cable.FallSilent();
        await page.EnterAsync(Search, "6");
        await page.EnterAsync(cell, "3.72");
        cable.Cut(); // what was on its way is lost
        await page.Locator("html[data-circuit=silent]").WaitForAsync();
        cable.Mend();

        await Assertions.Expect(page.Locator("[data-testid=heard]")).ToHaveTextAsync("3.61 3.72");
        await ShowsAsync("16 of 70 in the list");
        await page.EnterAsync(Search, "");
        await ShowsAsync("70 of 70 in the list");

        // What was chosen stays chosen, whatever is looked for.
        async Task ShowsAsync(string found)
        {
            await Assertions.Expect(page.Locator("[data-field=longChoice] [data-testid=choices-shown]")).ToHaveTextAsync(found);
            await Assertions.Expect(picker).ToHaveValueAsync("7");
        }
    }
}

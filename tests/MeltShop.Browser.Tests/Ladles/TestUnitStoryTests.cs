using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Ladles;

/// <summary>Two test units of one ladle on a tablet, with a program of its own: one is held apart while its ladle is released, then released apart.</summary>
public sealed class TestUnitStoryTests(RunningApp app, Chromium chromium) : IClassFixture<RunningApp>
{
    [Fact]
    public async Task TestUnit_HeldApart_StaysHeldWhenItsLadleIsReleasedUntilItIsReleasedApart()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        var heat = await page.SampledHeatAsync();
        await page.PrepareLadleAsync(heat);
        var ladle = page.Url.Split('/')[^1];
        await page.TapAndReactAsync("790");
        await page.MouldAsync("1", "150");
        await page.MouldAsync("2", "150");
        await page.LastMetalAsync("0.042");

        await page.OpenAsync($"/ladles/{ladle}/castings");
        await PieceAsync(page, "KB-1", "housings", "1");
        await PieceAsync(page, "KB-2", "covers", "2");
        await ApartAsync(page, "covers", "Hold", "a crack was seen");
        await page.OpenAsync($"/ladles/{ladle}");
        await page.ReleaseAsync();

        await page.OpenAsync($"/ladles/{ladle}/castings");
        await Assertions.Expect(page.Locator("[data-unit=covers]")).ToHaveAttributeAsync("data-apart", "Hold");
        await Assertions.Expect(page.Locator("[data-unit=covers] [data-testid=unit-standing]")).ToContainTextAsync("!");
        await Assertions.Expect(page.Locator("[data-unit=housings] [data-testid=unit-standing]")).Not.ToContainTextAsync("!");
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));

        await ApartAsync(page, "covers", "Release", "no crack under ultraviolet light");
        await Assertions.Expect(page.Locator("[data-unit=covers]")).ToHaveAttributeAsync("data-apart", "Release");
        Assert.Equal(
            ["Hold:covers:0", "Release::1", "Release:covers:1"],
            (await app.ReadAsync($"SELECT Verdict || ':' || COALESCE(TestUnit, '') || ':' || WasSigned FROM CastingDecisions WHERE TreatedLadleId = {ladle} ORDER BY Id")).Select(row => (string)row[0]));
    }

    private static async Task PieceAsync(IPage page, string label, string unit, string mould)
    {
        await page.EnterAsync("[data-testid=piece-form] [data-field=label] input", label);
        await page.EnterAsync("[data-testid=piece-form] [data-field=wallMm] input", "25");
        await page.EnterAsync("[data-testid=piece-form] [data-field=testUnit] input", unit);
        await page.CheckAsync($"[data-testid=piece-form] [data-unit-mould='{mould}']");
        await page.PressUntilAsync("[data-testid=piece-form] button[type=submit]", $"[data-unit={unit}]");
    }

    /// <summary>Decides about a unit apart; a release is signed with the password.</summary>
    private static async Task ApartAsync(IPage page, string unit, string verdict, string reason)
    {
        var form = $"[data-unit={unit}] [data-testid=unit-form]";
        await page.OpenFormAsync($"[data-unit={unit}] [data-testid=unit-open]", form);
        await page.SelectOptionAsync($"{form} [data-field=verdict] select", verdict);
        await page.EnterAsync($"{form} [data-field=reason] input", reason);
        if (verdict == "Release") await page.EnterAsync($"{form} [data-field=password] input", Demo.Password);
        await page.PressUntilAsync($"{form} [data-testid=unit-yes]", $"[data-unit={unit}][data-apart={verdict}]");
    }
}

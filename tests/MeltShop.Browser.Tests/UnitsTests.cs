using System.Text.RegularExpressions;
using MeltShop.Browser.Tests.Heats;
using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>A shop that weighs in pounds and measures in °F, in a program of its own.</summary>
public sealed partial class UnitsTests(Chromium chromium) : IAsyncLifetime
{
    /// <summary>The page of the choice names all units.</summary>
    private static readonly string[] NamesThem = ["/shop"];

    private readonly RunningApp app = new();

    public async ValueTask InitializeAsync() => await app.StartAsync();

    public ValueTask DisposeAsync() => app.DisposeAsync();

    [Fact]
    public async Task Shop_ThatChosePoundsAndFahrenheit_ReadsAndTypesThemEverywhereAndKeepsWhatWasTyped()
    {
        await using var office = await chromium.DeskAsync(app.Address);
        var maren = await office.SignInAsync("maren");
        await maren.OpenAsync("/shop");
        await maren.SelectOptionAsync("[data-field=mass] select", "Pound");
        await maren.SelectOptionAsync("[data-field=temperature] select", "Fahrenheit");
        await maren.ClickAsync("[data-testid=units-form] button[type=submit]");
        await maren.WaitForSelectorAsync("[data-testid=units-saved]");

        await using var floor = await chromium.TabletAsync(app.Address);
        var page = await floor.SignInAsync("henning");
        var heat = await page.StartHeatAsync("furnace-1");
        await page.EnterAsync("[data-testid=temperature-form] [data-field=temperatureC] input", "2650.5");
        await page.PressUntilAsync("[data-testid=temperature-form] button[type=submit]", "[data-testid=timeline] li:has-text('2650.5 °F')");
        await page.WeighInAsync("1234.5");
        Assert.Equal((2650.5 - 32) * 5 / 9, (await app.ReadAsync("SELECT TemperatureC FROM Temperatures ORDER BY Id DESC LIMIT 1"))[0][0]);
        Assert.Equal(1234.5 * 0.45359237, (await app.ReadAsync("SELECT Kg FROM Weighings ORDER BY Id DESC LIMIT 1"))[0][0]);

        var hard = new List<string>();
        foreach (var path in Places.All.Append(heat).Except(NamesThem))
        {
            await page.VisitAsync(path);
            var numbers = await page.Locator("main input.number").EvaluateAllAsync<string[]>("all => all.map(e => `${e.closest('[data-field]')?.dataset.field}: ${e.value}`)");
            hard.AddRange(numbers.Where(number => Unweighed().IsMatch(number)).Select(number => $"{path}, {number}"));
            if (path.EndsWith("&kg=6000", StringComparison.Ordinal)) Assert.Contains("meltKg: 13228", numbers); // 13227.735731093
            hard.AddRange((await page.Locator("main").InnerTextAsync()).Split('\n').Where(line => Unit().IsMatch(Named().Replace(line, ""))).Select(line => $"{path}: {line}"));
        }

        Assert.True(hard.Count == 0, string.Join('\n', hard));
    }

    /// <summary>No scale, probe or price shows so many digits.</summary>
    [GeneratedRegex(@"[0-9]{2,}[.,][0-9]{4,}$")]
    private static partial Regex Unweighed();

    /// <summary>What somebody called a ladle is theirs.</summary>
    [GeneratedRegex(@"Ladle \d, \d+ kg")]
    private static partial Regex Named();

    [GeneratedRegex(@"\bkg\b|°C|\bK/min\b|/t\b")]
    private static partial Regex Unit();
}

using System.Globalization;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>The clock of a ladle on a tablet that is wrong about the time, and after the program is gone.</summary>
public sealed class ClockTests(Chromium chromium) : IAsyncLifetime
{
    /// <summary>A tick of the clock and the way of a page.</summary>
    private const double SlackSeconds = 2;

    private readonly RunningApp app = new();

    public async ValueTask InitializeAsync() => await app.StartAsync();

    public ValueTask DisposeAsync() => app.DisposeAsync();

    [Fact]
    public async Task Clock_OfATabletSevenMinutesFastInAnotherZone_IsRightAndGoesOnThroughACut()
    {
        await using var context = await chromium.TabletAsync(app.Address, "Pacific/Auckland");
        await context.AddInitScriptAsync("""
            const Real = Date;
            globalThis.Date = class extends Real {
              constructor(...parts) { parts.length ? super(...parts) : super(Date.now()); }
              static now() { return Real.now() + 7 * 60_000; }
            };
            """);
        var page = await context.SignInAsync("henning");
        await page.VisitAsync("/parts");
        var clock = page.Locator("ladle-clock").First;
        await clock.WaitForAsync();

        await AssertRightAsync(clock);
        await app.KillAsync();
        await Task.Delay(TimeSpan.FromSeconds(4), TestContext.Current.CancellationToken);
        await AssertRightAsync(clock);
    }

    private static async Task AssertRightAsync(ILocator clock)
    {
        var end = long.Parse((await clock.GetAttributeAsync("data-end"))!, CultureInfo.InvariantCulture);
        var stop = long.Parse((await clock.GetAttributeAsync("data-stop"))!, CultureInfo.InvariantCulture);
        var lines = await clock.EvaluateAsync<string[]>("clock => [...clock.shadowRoot.querySelectorAll('span')].map(line => line.textContent)");
        var now = TimeProvider.System.GetUtcNow().ToUnixTimeMilliseconds();

        Assert.InRange(Seconds(lines[0]) - ((now - end) / 1000.0), -SlackSeconds, SlackSeconds);
        Assert.InRange(Seconds(lines[1]) - ((stop - now) / 1000.0), -SlackSeconds, SlackSeconds);
    }

    private static int Seconds(string line)
    {
        var parts = line.Split(' ')[0].Split(':');
        return (int.Parse(parts[0], CultureInfo.InvariantCulture) * 60) + int.Parse(parts[1], CultureInfo.InvariantCulture);
    }
}

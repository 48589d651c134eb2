using System.Globalization;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>The clock of a ladle on a tablet that is wrong about the time, hears it late, and sleeps after the program is gone.</summary>
public sealed class ClockTests(Chromium chromium) : IAsyncLifetime
{
    /// <summary>How far the clock may be off.</summary>
    private const double MostSeconds = 0.5;

    private readonly RunningApp app = new();

    public async ValueTask InitializeAsync() => await app.StartAsync();

    public ValueTask DisposeAsync() => app.DisposeAsync();

    [Fact]
    public async Task Clock_OfATabletSevenMinutesFastInAnotherZone_IsRightAndGoesOnThroughACutAndASleep()
    {
        await using var context = await chromium.TabletAsync(app.Address, "Pacific/Auckland");
        await context.AddInitScriptAsync("""
            const Real = Date;
            globalThis.Date = class extends Real {
              constructor(...parts) { parts.length ? super(...parts) : super(Date.now()); }
              static now() { return Real.now() + 7 * 60_000; }
            };
            const monotonic = performance.now.bind(performance);
            let lost = 0;
            performance.now = () => monotonic() - lost;
            globalThis.sleepFor = (milliseconds) => (lost += milliseconds); // what the monotonic clock of a tablet loses while it sleeps
            """);
        var page = await context.SignInAsync("henning");
        await page.VisitAsync("/parts");
        var clock = page.Locator("ladle-clock").First;
        await clock.WaitForAsync();

        await AssertRightAsync(clock);
        await clock.EvaluateAsync("clock => clock.dataset.now = Number(clock.dataset.now) - 8000"); // a drawing that came late
        await AssertRightAsync(clock);
        await app.KillAsync();
        await Task.Delay(TimeSpan.FromSeconds(4), TestContext.Current.CancellationToken);
        await AssertRightAsync(clock);
        await page.EvaluateAsync("sleepFor(90_000)");
        await Task.Delay(TimeSpan.FromSeconds(1), TestContext.Current.CancellationToken);
        await AssertRightAsync(clock);
    }

    private static async Task AssertRightAsync(ILocator clock)
    {
        var end = long.Parse((await clock.GetAttributeAsync("data-end"))!, CultureInfo.InvariantCulture);
        var stop = long.Parse((await clock.GetAttributeAsync("data-stop"))!, CultureInfo.InvariantCulture);
        var asked = TimeProvider.System.GetUtcNow().ToUnixTimeMilliseconds();
        var lines = await clock.EvaluateAsync<string[]>("clock => [...clock.shadowRoot.querySelectorAll('span')].map(line => line.textContent)");
        var answered = TimeProvider.System.GetUtcNow().ToUnixTimeMilliseconds();

        // A whole second is shown for as long as it lasts, and what was shown was so between the question and its answer.
        Assert.InRange(Seconds(lines[0]), ((asked - end) / 1000.0) - 1 - MostSeconds, ((answered - end) / 1000.0) + MostSeconds);
        Assert.InRange(Seconds(lines[1]), ((stop - answered) / 1000.0) - 1 - MostSeconds, ((stop - asked) / 1000.0) + MostSeconds);
    }

    private static int Seconds(string line)
    {
        var parts = line.Split(' ')[0].Split(':');
        return (int.Parse(parts[0], CultureInfo.InvariantCulture) * 60) + int.Parse(parts[1], CultureInfo.InvariantCulture);
    }
}

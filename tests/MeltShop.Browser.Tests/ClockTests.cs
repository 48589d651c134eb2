using System.Globalization;
using System.Text.RegularExpressions;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>The clock of a ladle on a tablet that is wrong about the time, hears it late, and sleeps after the program is gone.</summary>
public sealed class ClockTests(Chromium chromium) : IAsyncLifetime
{
    /// <summary>How far the clock may be off.</summary>
    private const double MostSeconds = 0.5;

    /// <summary>How often it is looked at; a busy browser may draw a few of them late, and a clock that is off is off in most.</summary>
    private const int Looks = 15;

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
        var slept = clock.Locator("[part=slept]");
        await Assertions.Expect(slept).ToHaveTextAsync("");
        await page.EvaluateAsync("sleepFor(90_000)");
        await Task.Delay(TimeSpan.FromSeconds(1), TestContext.Current.CancellationToken);
        await AssertRightAsync(clock);
        await Assertions.Expect(slept).ToContainTextAsync(new Regex("with 1:(29|[3-5][0-9]) that this device slept, or that its clock was put forward")); // the sleep, and what passed between two ticks
        await AssertSaidAsync(clock);
    }

    /// <summary>Who cannot see the clock hears when it is over, and nothing before.</summary>
    private static async Task AssertSaidAsync(ILocator clock)
    {
        var said = clock.Locator("[role=status]");
        await Assertions.Expect(said).ToHaveTextAsync("");
        await clock.EvaluateAsync("clock => clock.dataset.stop = Number(clock.dataset.stop) - clock.left + 2000"); // two seconds from the browser's now
        await Assertions.Expect(said).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^Clocks: 0:[0-9]{2} too late$"));
    }

    private static async Task AssertRightAsync(ILocator clock)
    {
        var off = new List<string>();
        for (var look = 0; look < Looks; look++)
        {
            if (await OffAsync(clock) is { } how) off.Add(how);
            await Task.Delay(TimeSpan.FromMilliseconds(73), TestContext.Current.CancellationToken);
        }

        Assert.True(off.Count <= Looks / 3, string.Join("; ", off));
    }

    private static async Task<string?> OffAsync(ILocator clock)
    {
        var end = long.Parse((await clock.GetAttributeAsync("data-end"))!, CultureInfo.InvariantCulture);
        var stop = long.Parse((await clock.GetAttributeAsync("data-stop"))!, CultureInfo.InvariantCulture);
        var asked = TimeProvider.System.GetUtcNow().ToUnixTimeMilliseconds();
        var lines = await clock.EvaluateAsync<string[]>("clock => [...clock.shadowRoot.querySelectorAll('span')].map(line => line.textContent)");
        var answered = TimeProvider.System.GetUtcNow().ToUnixTimeMilliseconds();

        // A whole second is shown for as long as it lasts, and what was shown was so between the question and its answer.
        var isRight = IsWithin(lines[0], (asked - end) / 1000.0, (answered - end) / 1000.0) && IsWithin(lines[1], (stop - answered) / 1000.0, (stop - asked) / 1000.0);
        return isRight ? null : string.Create(CultureInfo.InvariantCulture, $"{lines[0]} and {lines[1]} at {(asked - end) / 1000.0:F1} and {(stop - asked) / 1000.0:F1} s");
    }

    private static bool IsWithin(string line, double least, double most) => Seconds(line) >= least - 1 - MostSeconds && Seconds(line) <= most + MostSeconds;

    private static int Seconds(string line)
    {
        var parts = line.Split(' ')[0].Split(':');
        return (int.Parse(parts[0], CultureInfo.InvariantCulture) * 60) + int.Parse(parts[1], CultureInfo.InvariantCulture);
    }
}

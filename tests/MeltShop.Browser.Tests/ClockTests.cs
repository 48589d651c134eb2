using System.Text.RegularExpressions;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>The clock of a ladle on a tablet that is wrong about the time, hears it late, and sleeps after the program is gone.</summary>
public sealed class ClockTests(Chromium chromium) : IAsyncLifetime
{
    /// <summary>How often it is looked at.</summary>
    private const int Looks = 5;

    /// <summary>
    /// How far off it is: drawn for this look, however late a busy browser would have come to it, and held against the true time of the same moment. Half a
    /// second may be missing, and what the fastest word of the program took to come here: nobody can know better.
    /// </summary>
    private const string Off = """
        (clock) => {
          clock.dataset.end = clock.dataset.end;
          const now = trueNow();
          const [since, left] = ["since", "left"].map((part) => clock.shadowRoot.querySelector(`[part=${part}]`).textContent);
          const seconds = (line) => line.split(" ")[0].split(":").reduce((minutes, rest) => 60 * minutes + Number(rest), 0);
          const isBetween = (line, least, most) => seconds(line) > least - 1.5 && seconds(line) < most + 0.5; // a whole second is shown for as long as it lasts
          const [past, still] = [(now - clock.dataset.end) / 1_000, (clock.dataset.stop - now) / 1_000];
          const isRight = isBetween(since, past - late, past) && isBetween(left, still, still + late);
          return isRight ? "" : `${since} and ${left} at ${past} and ${still} s, heard ${late} s late`;
        }
        """;

    private readonly RunningApp app = new();

    public async ValueTask InitializeAsync() => await app.StartAsync();

    public ValueTask DisposeAsync() => app.DisposeAsync();

    [Fact]
    public async Task Clock_OfATabletSevenMinutesFastInAnotherZone_IsRightAndGoesOnThroughACutAndASleep()
    {
        await using var context = await chromium.TabletAsync(app.Address, "Pacific/Auckland");
        await context.AddInitScriptAsync("""
            const Real = Date;
            globalThis.trueNow = () => Real.now();
            globalThis.late = Infinity; // the least that what the program said of the time was late by, s
            addEventListener("servertime", ({ detail }) => (late = Math.min(late, (Real.now() - detail) / 1_000)));
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
        await page.WaitForFunctionAsync("() => late < Infinity");

        await AssertRightAsync(clock);
        await clock.EvaluateAsync("clock => clock.dataset.now = Number(clock.dataset.now) - 8000"); // a drawing that came late
        await AssertRightAsync(clock);
        await app.KillAsync();
        var shown = await clock.Locator("[part=since]").InnerTextAsync();
        await Task.Delay(TimeSpan.FromSeconds(3), TestContext.Current.CancellationToken); // one that stands still is wrong by then
        await Assertions.Expect(clock.Locator("[part=since]")).Not.ToHaveTextAsync(shown);
        await AssertRightAsync(clock);
        var slept = clock.Locator("[part=slept]");
        await Assertions.Expect(slept).ToHaveTextAsync("");
        await page.EvaluateAsync("sleepFor(90_000)");
        await Assertions.Expect(slept).ToContainTextAsync(new Regex("with 1:(29|[3-5][0-9]) that this device slept, or that its clock was put forward")); // the sleep, and what passed between two ticks
        await AssertRightAsync(clock);
        await AssertSaidAsync(clock);
    }

    /// <summary>Who cannot see the clock hears when it is over, and nothing before.</summary>
    private static async Task AssertSaidAsync(ILocator clock)
    {
        var said = clock.Locator("[role=status]");
        await Assertions.Expect(said).ToHaveTextAsync("");
        await clock.EvaluateAsync("clock => clock.dataset.stop = Number(clock.dataset.stop) - clock.left + 2000"); // two seconds from the browser's now
        await Assertions.Expect(said).ToHaveTextAsync(new Regex("^Clocks: 0:[0-9]{2} too late$"));
    }

    private static async Task AssertRightAsync(ILocator clock)
    {
        for (var look = 0; look < Looks; look++)
        {
            Assert.Equal("", await clock.EvaluateAsync<string>(Off));
            await Task.Delay(TimeSpan.FromMilliseconds(73), TestContext.Current.CancellationToken);
        }
    }
}

using System.Globalization;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>What is typed in the moment between the end of a connection and its being noticed.</summary>
[Collection(typeof(DemoAppCollection))]
public sealed class SilenceTests(Chromium chromium, RunningApp app)
{
    private const string Search = "[data-field=longChoice] .narrow-choices";

    /// <summary>A line to a page whose timers go as the test says: what is measured is the page's rule and no machine.</summary>
    private const string Line = """
        async () => {
          const { listen } = await import("/entry/circuit.js");
          const html = document.documentElement;
          const line = (globalThis.line = { ways: [0], busyUntil: 0, isDead: false, isHeld: false, asked: 0, due: 0, said: [] });
          new MutationObserver(() => line.said.push(html.dataset.circuit ?? "answers", Date.now())).observe(html, { attributeFilter: ["data-circuit"] });
          listen({
            invokeMethodAsync: () => new Promise((answer) => {
              const way = line.ways[line.asked++ % line.ways.length];
              setTimeout(() => {
                line.due = Math.max(Math.max(Date.now(), line.busyUntil) + way, line.due); // none overtakes another
                setTimeout(() => line.isDead || answer(Date.now()), line.due - Date.now());
              }, way);
            }),
          });
          const press = document.createElement("button");
          document.querySelector("main").append(press);
          line.isHeld = !press.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true }));
        }
        """;

    /// <summary>Milliseconds of the page's own clock, which the test turns.</summary>
    private const int SaidWithin = 1_500;

    [Fact]
    public async Task Silence_OfALineThatIsLongOrBusy_IsSaidOnlyOnceItIsDeadAndThenSoon()
    {
        var start = new DateTime(2026, 11, 26, 6, 0, 0, DateTimeKind.Utc);
        await using var context = await chromium.TabletAsync(app.Address);
        await context.SilentAfterAsync(1.5); // as in a shop
        var page = await context.NewPageAsync();
        await page.Clock.InstallAsync(new() { TimeDate = start });
        await page.GotoAsync("/look"); // a page without a circuit of its own
        // On from wherever a slow machine has got to.
        await page.Clock.PauseAtAsync(start.AddHours(1));
        await page.EvaluateAsync(Line);
        Assert.False(await page.EvaluateAsync<bool>("line.isHeld")); // it has come late, and just now

        // 300 ms each way, and now and then 250 ms more.
        await page.EvaluateAsync("line.ways = [300, 340, 280, 550, 300, 310]");
        await page.Clock.RunForAsync(20_000);

        // Busy for 0.7 s, and for 1 s, whenever between two questions that begins.
        for (var phase = 0; phase < 250; phase += 50)
        {
            foreach (var (way, busy) in new[] { (0, 700), (0, 1_000), (300, 700), (300, 1_000) })
            {
                await page.Clock.RunForAsync(3_000 + phase);
                await page.EvaluateAsync($"Object.assign(line, {{ ways: [{way}], busyUntil: Date.now() + {busy} }})");
            }
        }

        await page.Clock.RunForAsync(3_000);
        Assert.Equal([], await page.EvaluateAsync<object[]>("line.said"));

        for (var phase = 0; phase < 250; phase += 50)
        {
            var deadAt = await page.EvaluateAsync<double>("() => { line.isDead = true; return Date.now(); }");
            await page.Clock.RunForAsync(SaidWithin);
            var silence = await page.EvaluateAsync<object[]>("line.said.splice(0)");
            Assert.Equal("silent", Assert.IsType<string>(silence[0]));
            TestContext.Current.TestOutputHelper!.WriteLine($"said {Convert.ToDouble(silence[1], CultureInfo.InvariantCulture) - deadAt} ms after the line was dead");

            await page.EvaluateAsync("line.isDead = false");
            await page.Clock.RunForAsync(3_000 + phase);
            Assert.Equal("answers", (await page.EvaluateAsync<object[]>("line.said.splice(0)"))[0]);
        }
    }

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

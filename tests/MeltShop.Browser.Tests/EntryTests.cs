using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>What is entered on a tablet while its connection is cut, and what two tablets at one heat see of each other.</summary>
public sealed partial class EntryTests(Chromium chromium, EntryTests.App app) : IClassFixture<EntryTests.App>
{
    private const string Degrees = "[data-testid=temperature-form] [data-field=temperatureC] input";
    private const string DegreesForm = "[data-testid=temperature-form]";
    private const string Kg = "[data-testid=weigh-form] [data-field=kg] input";
    private const string Dip = "[data-testid=dip-form]";

    /// <summary>
    /// What the address names is pressed once a silence is over, and named until its form has come or somebody goes on; what a page says of its
    /// state after it was left goes into no other page's address.
    /// </summary>
    private const string Opening = """
        async () => {
          const { say } = await import("/entry/opened.js");
          const main = document.querySelector("main");
          const saw = [];
          let presses = 0;
          const address = (name) => new URLSearchParams(location.search).getAll(name).join();
          const see = async (what) => {
            await new Promise((done) => setTimeout(done)); // until the page was looked at
            saw.push(`${what} ${presses} ${address("open")}`);
          };
          document.documentElement.dataset.circuit = "silent";
          main.insertAdjacentHTML("beforeend", "<button data-opens='a' data-of='1'></button>");
          main.lastChild.addEventListener("click", () => presses++);
          await see("in a silence");
          delete document.documentElement.dataset.circuit;
          await see("after it");
          main.append(document.createElement("i"));
          await see("no form yet");
          main.insertAdjacentHTML("beforeend", "<form data-testid='a'></form>");
          await see("opened");
          main.lastChild.remove();
          await see("closed");
          say("kind", ["not kept"], "/yard");
          saw.push(`another page's ${address("kind")}`);
          say("kind", ["kept"], "/look");
          saw.push(`its own ${address("kind")}`);
          history.replaceState(null, "", "/look");
          return saw;
        }
        """;

    /// <summary>The first field of what was opened has the keyboard at once, and nobody who types loses it.</summary>
    private const string First = """
        async () => {
          const saw = [];
          document.activeElement.blur();
          for (const id of ["one", "two"]) {
            document.querySelector("main").insertAdjacentHTML("beforeend", `<input id="${id}" data-first>`);
            await new Promise((done) => setTimeout(done)); // until the page was looked at
            saw.push(document.activeElement.id);
          }
          return saw;
        }
        """;

    private static readonly TimeSpan Outage = TimeSpan.FromSeconds(8);

    /// <summary>One program for all of these, which gives up a lost circuit, or an idle person, after 3 s; each test has a furnace of its own.</summary>
    public sealed class App : IAsyncLifetime
    {
        private string? heat;

        public RunningApp Running { get; } = new();

        /// <summary>The heat of those tests that only look at what becomes of an entry.</summary>
        public async Task<string> HeatAsync(IPage page) => heat ??= await page.StartHeatAsync("furnace-2");

        public async ValueTask InitializeAsync() => await Running.StartAsync(
            ("MeltShop__KeepCircuitSeconds", "3"), ("MeltShop__StepDownMinutes", "0.05"));

        public ValueTask DisposeAsync() => Running.DisposeAsync();
    }

    [Fact]
    public async Task Entries_OfACutOf8Seconds_ArriveOnceInOrderWithTheirOwnTimes()
    {
        await using var cable = new Cable(app.Running.Address);
        await using var context = await chromium.TabletAsync(cable.Address);
        var page = await context.SignInAsync("henning");
        var heat = await page.StartHeatAsync("furnace-1");
        var id = heat.Split('/')[^1];
        await page.OpenSampleAsync(heat);
        await page.EnterAsync("[data-cell='0.C']", "3.61");
        await page.WaitForSelectorAsync("form[data-versions*='burns[0].C']");
        await page.OpenFormAsync("[data-open=dip]", Dip);

        cable.Cut();
        var cutAt = TimeProvider.System.GetUtcNow();
        await page.Locator("#components-reconnect-modal").WaitForAsync();
        TestContext.Current.SendDiagnosticMessage($"The cut was said after {(TimeProvider.System.GetUtcNow() - cutAt).TotalMilliseconds:0} ms");
        await page.EnterAsync("[data-cell='0.Si']", "1,52");
        foreach (var degrees in new[] { "1431", "1432", "1433" })
        {
            await page.EnterAsync(Degrees, degrees);
            await page.HandInAsync(DegreesForm);
            await Assertions.Expect(page.Locator(Degrees)).ToHaveValueAsync("");
            await page.EvaluateAsync("(() => { const now = Date.now; Date.now = () => now() - 3_600_000; })()"); // the tablet's clock is set back
        }

        await page.EnterAsync($"{Dip} [data-field=kg] input", "850.25");
        await page.EnterAsync($"{Dip} [data-field=reason] input", "load cell");
        await page.HandInAsync(Dip);
        await page.EvaluateAsync("(() => { const now = Date.now; Date.now = () => now() + 7_200_000; })()"); // and forward, as if it had slept
        await page.EnterAsync(Degrees, "1434");
        await page.HandInAsync(DegreesForm);

        await Assertions.Expect(page.Locator("#entry-queue")).ToHaveAttributeAsync("data-count", "6");
        Assert.Empty(await app.Running.ReadAsync($"SELECT 1 FROM Temperatures WHERE HeatId = {id}"));
        await Task.Delay(TimeSpan.FromSeconds(Math.Max(0, (cutAt + Outage - TimeProvider.System.GetUtcNow()).TotalSeconds)), TestContext.Current.CancellationToken);
        var mendedAt = TimeProvider.System.GetUtcNow();
        cable.Mend();

        await page.WaitForSelectorAsync("html:not([data-circuit]):has(#entry-queue[hidden]):has([data-state=ready])", new() { State = WaitForSelectorState.Attached });
        await page.HeardAsync();
        await Assertions.Expect(page.Locator("#entry-queue")).ToBeHiddenAsync(); // still, now that the page's scripts run for certain
        var rows = await app.Running.ReadAsync($"SELECT TemperatureC, ObservedAt, EnteredAt FROM Temperatures WHERE HeatId = {id} ORDER BY Id");
        Assert.Equal([1431.0, 1432.0, 1433.0, 1434.0], rows.Select(row => (double)row[0]));
        var observed = rows.Select(row => (long)row[1]).ToList();
        Assert.Equal(observed.Order(), observed);
        Assert.All(rows, row => Assert.True((long)row[1] <= (long)row[2])); // nothing that is still to come
        Assert.All(observed[..3], ticks => Assert.InRange(ticks, cutAt.UtcTicks - TimeSpan.TicksPerSecond, mendedAt.UtcTicks));
        Assert.All(rows, row => Assert.True((long)row[2] >= mendedAt.UtcTicks));
        var dip = Assert.Single(await app.Running.ReadAsync("SELECT ObservedAt FROM FurnaceMetals WHERE LevelKg = 850.25"));
        Assert.InRange((long)dip[0], observed[2], mendedAt.UtcTicks);
        Assert.Equal(heat, new Uri(page.Url).AbsolutePath);
        Assert.Equal(["1,52", "3.61"], (await app.Running.ReadAsync($"SELECT Text FROM Drafts WHERE Subject = 'heat/{id}/sample' ORDER BY Text")).Select(row => (string)row[0]));
    }

    [Fact]
    public async Task Drafts_OfTwoTabletsAtOneHeat_AreSeenByBothUntilHandedIn()
    {
        await using var laboratory = await chromium.TabletAsync(app.Running.Address);
        await using var floor = await chromium.TabletAsync(app.Running.Address);
        var henning = await laboratory.SignInAsync("henning");
        var tilda = await floor.SignInAsync("tilda");
        var heat = await henning.StartHeatAsync("furnace-3", 1500);
        await henning.OpenSampleAsync(heat);
        await tilda.OpenSampleAsync(heat);

        await henning.EnterAsync("[data-cell='0.C']", "3.6127");
        await Assertions.Expect(tilda.Locator("[data-cell='0.C']")).ToHaveValueAsync("3.6127");
        await Assertions.Expect(tilda.Locator("[data-testid=typed-by]")).ToContainTextAsync("Burn 1, C 3.6127");
        await tilda.EnterAsync("[data-cell='0.Si']", "1.5031");
        await Assertions.Expect(henning.Locator("[data-cell='0.Si']")).ToHaveValueAsync("1.5031");

        // What the other one types does not fall into a cell while one types there; that the two do not agree is said.
        await tilda.FocusAsync("[data-cell='0.Mn']");
        await tilda.Keyboard.TypeAsync("0.31");
        await henning.EnterAsync("[data-cell='0.Mn']", "0.29");
        await Assertions.Expect(tilda.Locator("[data-testid=typed-by]")).ToContainTextAsync("Burn 1, Mn 0.29");
        await Assertions.Expect(tilda.Locator("[data-cell='0.Mn']")).ToHaveValueAsync("0.31");
        await tilda.Locator("[data-cell='0.Mn']").BlurAsync();
        await Assertions.Expect(tilda.Locator("[data-testid=typed-clash]")).ToContainTextAsync("typed 0.29. Here stands 0.31");

        await henning.OpenSampleAsync(heat);
        await Assertions.Expect(henning.Locator("[data-cell='0.C']")).ToHaveValueAsync("3.6127");
        Assert.Empty(await app.Running.ReadAsync("SELECT 1 FROM TrailRows WHERE Payload LIKE '%3.6127%'"));

        await henning.PressUntilAsync("[data-testid=sample-form] button[type=submit]", "[data-testid=sample]");
        await Assertions.Expect(tilda.Locator("[data-cell='0.C']")).ToHaveValueAsync("");
        Assert.Empty(await app.Running.ReadAsync("SELECT 1 FROM Drafts WHERE Text IN ('3.6127', '1.5031')"));
        Assert.Equal(["1.5031", "3.6127"], (await app.Running.ReadAsync("SELECT InstrumentText FROM Readings WHERE InstrumentText IN ('3.6127', '1.5031') ORDER BY InstrumentText")).Select(row => (string)row[0]));
    }

    [Fact]
    public async Task Touch_WhileTheCircuitIsSilent_IsNotBelievedUntilItAnswers()
    {
        await using var cable = new Cable(app.Running.Address);
        await using var context = await chromium.TabletAsync(cable.Address);
        await context.AddInitScriptAsync("globalThis.heard = 0; addEventListener('servertime', () => heard++);");
        await context.SilentAfterAsync(1.5); // as in a shop: here no press is lost by it
        var page = await context.SignInAsync("henning");
        await OpenAskedAsync();

        // A silence that the next answer ends, and a press within it, which a busy machine must not make an old one. Then a minute's sleep.
        foreach (var pause in new[] { "document.documentElement.dataset.circuit = 'silent'", "now += 60_000" })
        {
            Assert.Equal("/yard", await page.EvaluateAsync<string>($$"""
                () => {
                  let now = Date.now();
                  Date.now = () => now;
                  {{pause}};
                  document.querySelector(".rail a[href='/grades']").click();
                  return location.pathname;
                }
                """));
            await page.IsAtAsync("/grades");
            await OpenAskedAsync();
        }

        await page.EvaluateAsync("""
            () => void new MutationObserver(() => (globalThis.saidAt = Date.now()))
              .observe(document.documentElement, { attributeFilter: ["data-circuit"] })
            """);
        cable.FallSilent();
        var silentAt = TimeProvider.System.GetUtcNow();
        await page.Locator("#components-reconnect-modal:not([class*=components-reconnect-])").WaitForAsync(); // said by the page's own question, long before the framework does
        TestContext.Current.SendDiagnosticMessage($"The silence was said after {await page.EvaluateAsync<double>("saidAt") - silentAt.ToUnixTimeMilliseconds():0} ms");
        await page.KeepAsync("yard-cut-tablet-light");
        await page.TapAsync(".rail a[href='/grades']");
        Assert.Equal("/yard", new Uri(page.Url).AbsolutePath);

        async Task OpenAskedAsync()
        {
            await page.OpenAsync("/yard");
            await page.WaitForFunctionAsync("() => heard > 3"); // by then it has asked its circuit
        }
    }

    [Fact]
    public async Task Page_AfterALossThatCameBeforeTheFirstBeat_BelievesNoTouchAndIsLoadedAnew()
    {
        await using var context = await chromium.TabletAsync(app.Running.Address);
        var page = await context.SignInAsync("henning");
        await page.GotoAsync("/look?open=a.1"); // a page without a circuit: never asked, as one that lost it before its first beat
        await page.EvaluateAsync("document.documentElement.dataset.before = ''");
        Assert.Equal(["in a silence 0 a.1", "after it 1 a.1", "no form yet 1 a.1", "opened 1 a.1", "closed 1 ", "another page's ", "its own kept"], await page.EvaluateAsync<string[]>(Opening));
        Assert.Equal(["one", "one"], await page.EvaluateAsync<string[]>(First));

        await Say("show");
        await page.TapAsync("main a.press");
        Assert.Equal("/look", new Uri(page.Url).AbsolutePath);

        await Say("hide");
        await page.WaitForSelectorAsync("html:not([data-before]):not([data-circuit]) main a.press");

        // What the address has kept is not typed again over what somebody says next.
        await page.OpenAsync("/yard");
        var kind = page.Locator("[data-field=kind] select");
        await kind.SelectOptionAsync("SteelScrap");
        await page.IsAtAsync("/yard?kind=SteelScrap");
        await page.EvaluateAsync("document.documentElement.dataset.before = ''");
        await Say("failed");
        await page.WaitForSelectorAsync("html:not([data-before]):not([data-circuit])", new() { State = WaitForSelectorState.Attached });
        await Assertions.Expect(kind).ToHaveValueAsync("SteelScrap");
        await kind.SelectOptionAsync("");
        await page.IsAtAsync("/yard");
        Assert.Equal("", await kind.EvaluateAsync<string>("(field) => new Promise((done) => { document.body.append(document.createElement('i')); setTimeout(() => done(field.value)); })"));

        async Task Say(string state) => await page.EvaluateAsync(
            """
            (state) => document.getElementById("components-reconnect-modal")
              .dispatchEvent(new CustomEvent("components-reconnect-state-changed", { detail: { state } }))
            """, state);
    }

    [Fact]
    public async Task Page_AfterALongAbsence_IsLoadedAnewInTheSamePlaceWithItsOpenFormsItsRowsAndWhatWasTyped()
    {
        const string place = "/yard/1?a=place", bin = "[data-testid=move-form] [data-field=bin] input", symbol = "[data-field='row0.element'] input";
        const string material = "[data-testid=weigh-form] select", cancel = "[data-opens=cancel-form]", reason = "[data-testid=cancel-form] input";
        await using var cable = new Cable(app.Running.Address);
        await using var context = await chromium.TabletAsync(cable.Address);
        var page = await context.SignInAsync("henning");
        await page.VisitAsync(place);
        await page.EvaluateAsync("""
            document.documentElement.dataset.before = "";
            document.querySelector("main").insertAdjacentHTML("beforeend", "<p data-field='secret'><input type='password'></p>");
            """);
        await page.PressUntilAsync("[data-opens=analysis-form]", "[data-testid=analysis-form]");
        await page.Locator("[data-again='add row']").EvaluateAsync("(press) => { const now = Date.now; Date.now = () => now() + 60_000; press.click(); }"); // after a sleep: it is held back, made, and counts once
        await page.EnterAsync(symbol, "Cu");
        await page.OpenFormAsync("[data-testid=lots] li:last-child [data-opens=move-form]", "[data-testid=move-form]");
        await page.IsAtAsync(place + "&open=analysis-form&open=move-form*");
        var open = new Uri(page.Url).PathAndQuery;
        await page.EnterAsync(bin, "Bin 61");

        cable.Cut();
        await page.Locator("#components-reconnect-modal").WaitForAsync();
        await page.EnterAsync("[data-field=secret] input", "a password");
        await page.EvaluateAsync("(() => { const now = Date.now; Date.now = () => now() + 170_000; })()");
        await page.WaitForFunctionAsync("() => Object.keys(sessionStorage).some((name) => name.startsWith('meltshopTyped/'))");
        Assert.DoesNotContain("a password", await page.EvaluateAsync<string>("JSON.stringify(sessionStorage)"), StringComparison.Ordinal);
        cable.Mend();

        await page.WaitForSelectorAsync("html:not([data-before]):not([data-circuit])", new() { State = WaitForSelectorState.Attached });
        await Assertions.Expect(page.Locator(bin)).ToHaveValueAsync("Bin 61");
        await Assertions.Expect(page.Locator(symbol)).ToHaveValueAsync("Cu");
        await Assertions.Expect(page.Locator(symbol.Replace("row0", "row1", StringComparison.Ordinal))).ToHaveCountAsync(0);
        await page.IsAtAsync(open);
        await page.PressUntilGoneAsync("[data-testid=move-form] button[type=submit]", "[data-testid=move-form]");
        await Assertions.Expect(page.Locator("[data-testid=lots] li").Last.Locator("[data-testid=bin]")).ToContainTextAsync("Bin 61"); // it was heard
        await page.IsAtAsync(place + "&open=analysis-form");

        // A material that a press has written beside its mass (without one it is nothing typed), and a question: it is not asked anew, and has its answer when it is.
        await page.VisitAsync(await app.HeatAsync(page));
        await page.PressUntilAsync("[data-testid=weighings] tr:last-child .row-press", "[data-testid=weighings] tr:last-child.chosen");
        await page.HeardAsync();
        Assert.Equal(0, await page.EvaluateAsync<int>("async () => (await import('/entry/typed.js')).texts().length"));
        await page.EnterAsync(Kg, "12");
        await page.PressUntilAsync(cancel, "[data-testid=cancel-form]");
        await page.EnterAsync(reason, "wrong furnace");
        var chosen = await page.InputValueAsync(material);
        await page.BeAwayAsync();
        await Assertions.Expect(page.Locator(Kg)).ToHaveValueAsync("12");
        await Assertions.Expect(page.Locator(material)).ToHaveValueAsync(chosen);
        await page.EvaluateAsync("(() => { const now = performance.now.bind(performance); performance.now = () => now() + 200_000; })()"); // it waits for the question as long as it takes
        await page.PressUntilAsync(cancel, "[data-testid=cancel-form]");
        await Assertions.Expect(page.Locator(reason)).ToHaveValueAsync("wrong furnace");
    }

    [Fact]
    public async Task Station_ThatNobodyTouches_NamesNobodyUnlessAClockRuns()
    {
        await using var context = await chromium.TabletAsync(app.Running.Address);
        await context.AddInitScriptAsync("""
            globalThis.running = setInterval(() => {
              if (!document.body || document.querySelector("ladle-clock")) return;
              document.body.append(document.createElement("ladle-clock"));
              document.querySelector("ladle-clock").dataset.stop = Date.now() + 600_000;
            }, 50);
            """); // from the first moment on: a busy machine may take longer than the idle time to get here
        var page = await context.SignInAsync("tilda", isShared: true);
        await page.WaitForSelectorAsync("ladle-clock", new() { State = WaitForSelectorState.Attached });
        await page.ChoosePinAsync("38164");

        // Who asks for another person, and is it still, finds what was typed.
        const string mass = "[data-testid=stock-form] [data-field=kg] input";
        await page.OpenAsync("/yard/1?open=stock-form");
        await page.HasFocusAsync("[data-testid=stock-form]");
        await page.EnterAsync(mass, "120");
        await page.PressUntilAsync("[data-testid=change-person]", "main.plain a[href='/yard/1']");
        await page.TapAsync("main.plain a[href='/yard/1']");
        await page.PressUntilAsync("[data-opens=stock-form]", "[data-testid=stock-form]");
        await Assertions.Expect(page.Locator(mass)).ToHaveValueAsync("120");

        // So it is where another has been there in between, on another page, and has typed there: here nobody.
        await page.EvaluateAsync("async () => { await (await import('/entry/back.js')).keep(); const form = document.getElementById('step-down'); form.elements.returnTo.value = '/yard'; form.submit(); }");
        await page.IsAtAsync("/yard");
        await page.SelectOptionAsync("[data-field=kind] select", "SteelScrap");
        await page.IsAtAsync("/yard?kind=SteelScrap");
        await page.PressUntilAsync("[data-testid=change-person]", "main.plain h1");
        Assert.Equal(2, await page.EvaluateAsync<int>("Object.keys(sessionStorage).filter((name) => name.startsWith('meltshopTyped/')).length"));
        await page.GotoAsync("/station?returnTo=/yard/1");
        await page.CheckAsync("input[value=tilda]");
        await page.FillAsync("#pin", "38164");
        await page.TapAsync("main.plain .press-primary");
        await page.PressUntilAsync("[data-opens=stock-form]", "[data-testid=stock-form]");
        await Assertions.Expect(page.Locator(mass)).ToHaveValueAsync("120");
        await page.OpenAsync("/");

        var other = await context.NewPageAsync(); // its own clock goes on: by itself it never names nobody
        await other.OpenAsync("/yard");
        await page.BringToFrontAsync();
        await LooksAsync(1); // for clocks
        await page.PressUntilAsync(".rail-link[href='/charge']", ".rail-here[href='/charge']");
        await page.IsAtAsync("/charge");
        await page.EvaluateAsync("() => { clearInterval(running); document.querySelector('ladle-clock').remove(); }"); // as the floor's goes with its page, and runs on
        await LooksAsync(5);
        Assert.NotEqual("Nobody is named", await page.Locator("[data-testid=person]").InnerTextAsync());

        // A clock that was over hours ago, one that was over when its page was left, and an entry that waits for somebody else, keep nobody named.
        await page.EvaluateAsync("""
            () => new Promise((seen) => {
              const over = document.createElement("ladle-clock");
              over.dataset.stop = Date.now() - 1_800_000;
              document.body.append(over);
              setTimeout(seen, 1_500);
            })
            """);
        await page.PressUntilAsync(".rail-link[href='/']", ".rail-here[href='/']");
        await page.EvaluateAsync("""
            () => {
              document.querySelector("body > ladle-clock")?.remove();
              const entry = { operation: "RecordTemperature", about: {}, fields: {}, title: "", observedAt: new Date(), personId: 999, name: "Somebody", since: Date.now(), place: "meltshop-entry/1-other", tab: "other" };
              localStorage[entry.place] = JSON.stringify(entry);
              const over = document.createElement("ladle-clock");
              over.dataset.stop = Date.now() - 10_800_000;
              document.body.append(over);
            }
            """);

        await Assertions.Expect(page.Locator("[data-testid=person]")).ToHaveTextAsync("Nobody is named");
        await Assertions.Expect(other.Locator("[data-testid=person]")).ToHaveTextAsync("Nobody is named");
        await page.PressUntilAsync("[data-testid=change-person]", "main.plain h1");
        await page.IsAtAsync("/station?returnTo=*"); // the address changes first, and another one in that moment would end its loading
        await page.OpenAsync("/yard");
        await page.TapAsync("form[action='/sign-out'] button");
        await other.IsAtAsync("/sign-in?returnTo=*yard*"); // nor does it go on for somebody who has signed out

        // The page looks once a second, by a timer that is older than these: by their end it has looked as often.
        Task LooksAsync(int times) => page.EvaluateAsync("async (times) => { for (; times >= 0; times--) await new Promise((done) => setTimeout(done, 1_000)); }", times);
    }
}

using System.Globalization;
using System.Text.Json.Nodes;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>What becomes of an entry whose answer does not come, or is not what it should be.</summary>
public sealed partial class EntryTests
{
    private const string Material = "[data-testid=weigh-form] select";

    /// <summary>What is typed and pressed in one breath.</summary>
    private const string Hands = """
        () => {
          globalThis.type = (field, text) => {
            field.value = text;
            field.dispatchEvent(new Event("input", { bubbles: true }));
          };
          globalThis.enter = (field, text) => {
            type(field, text);
            field.dispatchEvent(new Event("change", { bubbles: true }));
            field.form.requestSubmit();
          };
        }
        """;

    [Fact]
    public async Task Queue_WhoseTabIsLoadedAnewBeforeItIsSent_IsSentAfterwards()
    {
        await using var cable = new Cable(app.Running.Address);
        await using var context = await chromium.TabletAsync(cable.Address);
        var page = await context.SignInAsync("henning");
        var heat = await app.HeatAsync(page);
        await page.OpenAsync(heat);
        await page.RouteAsync("**/api/v1/entries", route => route.AbortAsync());
        await page.EnterAsync(Degrees, "1444");
        await page.EvaluateAsync($$"""
            async () => {
              const { load } = await import("/entry/circuit.js");
              document.documentElement.dataset.before = "";
              document.querySelector("{{DegreesForm}} button[type=submit]").click();
              load();
            }
            """);
        await page.WaitForSelectorAsync("html:not([data-before]):has([data-state=ready])", new() { State = WaitForSelectorState.Attached });
        await Assertions.Expect(page.Locator("#entry-queue")).ToHaveAttributeAsync("data-count", "1");
        await page.UnrouteAllAsync();

        await Assertions.Expect(page.Locator("#entry-queue")).ToBeHiddenAsync();
        await page.GetByText("1444 °C").First.WaitForAsync();
        await Assertions.Expect(page.Locator(Degrees)).ToHaveValueAsync(""); // what was handed in is not put back: it would be entered twice
        Assert.Single(await app.Running.ReadAsync("SELECT 1 FROM Temperatures WHERE TemperatureC = 1444"));
    }

    [Fact]
    public async Task Entry_WhoseAnswerWasLost_IsKeptOnce()
    {
        await using var context = await chromium.TabletAsync(app.Running.Address);
        var page = await context.SignInAsync("henning");
        var heat = await app.HeatAsync(page);
        await page.OpenAsync(heat);
        await page.EvaluateAsync("""
            () => {
              for (let text = "x".repeat(1 << 20); text; ) {
                try {
                  localStorage[`full ${localStorage.length}`] = text;
                } catch {
                  text = text.slice(0, text.length >> 1);
                }
              }
            }
            """); // no room for an entry
        var posts = 0;
        var isSeen = new TaskCompletionSource();
        await page.RouteAsync("**/api/v1/entries", async route =>
        {
            if (++posts > 1)
            {
                await isSeen.Task;
                await route.ContinueAsync();
                return;
            }

            await route.FetchAsync(); // the program has it
            await route.AbortAsync(); // and the browser never hears of it
        });
        await page.EnterAsync(Degrees, "1445");
        await page.HandInAsync(DegreesForm);
        await page.OpenQueueAsync();
        await Assertions.Expect(page.Locator("#entry-queue li")).ToContainTextAsync("leave this page open");
        Assert.False(await IsKeptAsync());
        await page.EvaluateAsync("() => { for (const name of Object.keys(localStorage)) if (name.startsWith('full')) delete localStorage[name]; }");
        Assert.True(await IsKeptAsync());
        isSeen.SetResult();

        await page.GetByText("1445 °C").First.WaitForAsync();
        await Assertions.Expect(page.Locator("#entry-queue")).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator(Degrees)).ToHaveValueAsync("");
        Assert.True(posts > 1);
        Assert.Single(await app.Running.ReadAsync("SELECT 1 FROM Temperatures WHERE TemperatureC = 1445"));

        // Where storage is forbidden altogether the page does without.
        await page.UnrouteAllAsync();
        await page.AddInitScriptAsync("for (const name of ['localStorage', 'sessionStorage']) Object.defineProperty(window, name, { get() { throw new DOMException('denied', 'SecurityError'); } });");
        await page.OpenAsync(heat);
        await page.EnterAsync(Degrees, "1449");
        await page.HandInAsync(DegreesForm);
        await page.GetByText("1449 °C").First.WaitForAsync();
        await Assertions.Expect(page.Locator("#entry-queue")).ToBeHiddenAsync();

        // Whether nothing would be lost with the page, so that it may be loaded anew.
        Task<bool> IsKeptAsync() => page.EvaluateAsync<bool>("import('/entry/queue.js').then((queue) => queue.isKept())");
    }

    /// <summary>
    /// Answered after their forms have been left free and empty: an open form that says nothing would be filled in again. Texts that others see
    /// stay, and have what was found against them at their fields. Or answered while the circuit is silent: what was accepted is told once it answers,
    /// what was refused stays to be seen.
    /// </summary>
    [Fact]
    public async Task Entries_AnsweredLate_AreToldToTheirForms()
    {
        await using var context = await chromium.TabletAsync(app.Running.Address);
        await context.SilentAfterAsync(3);
        var page = await context.SignInAsync("henning");
        var circuit = await HeldCircuit.OfAsync(page);
        await page.OpenSampleAsync(await app.HeatAsync(page));
        await HurryAsync(page, circuit);
        var late = new Dictionary<string, TaskCompletionSource> { ["WeighIn"] = new(), ["RecordSample"] = new() };
        await page.RouteAsync("**/api/v1/entries", async route =>
        {
            foreach (var (_, answer) in late.Where(one => route.Request.PostData!.Contains($"\"{one.Key}\""))) await answer.Task;
            await route.ContinueAsync();
        });
        var chosen = page.Locator("[data-testid=weighings] tr.chosen");
        var first = await chosen.GetAttributeAsync("data-material");
        await page.EnterAsync("[data-cell='0.C']", "3,5x");
        await page.EnterAsync(Kg, (await chosen.Locator("[data-heading=Target]").InnerTextAsync()).Split('\u00a0')[0]);
        await page.HandInAsync("[data-testid=weigh-form]");
        await page.HandInAsync("[data-testid=sample-form]");
        await Assertions.Expect(page.Locator(Kg)).ToHaveValueAsync("");
        await page.WaitForSelectorAsync("[data-testid=sample-form][data-freed]");
        await Assertions.Expect(page.Locator("[data-cell='0.C']")).ToHaveValueAsync("3,5x");

        late["WeighIn"].SetResult();
        await page.WaitForSelectorAsync("[data-testid=weighed]");
        await page.WaitForSelectorAsync($"[data-testid=weighings] tr.chosen:not([data-material={first}])");
        late["RecordSample"].SetResult();
        await page.WaitForSelectorAsync("[data-testid=sample-form] [data-testid=cell-findings]");
        await Assertions.Expect(page.Locator("#entry-queue")).ToBeHiddenAsync();
        await page.EnterAsync("[data-cell='0.C']", "3.58");
        await page.HandInAsync("[data-testid=sample-form]");

        await page.WaitForSelectorAsync("[data-testid=sample-saved]");
        await Assertions.Expect(page.Locator("[data-testid=sample-form]")).ToHaveCountAsync(0);

        await page.OpenSampleAsync(await app.HeatAsync(page));
        await page.EnterAsync("[data-cell='0.C']", "3.57");
        await Assertions.Expect(page.Locator("form[data-versions*='burns[0].C']")).ToHaveCountAsync(1);
        await page.EvaluateAsync("() => { globalThis.told = 0; addEventListener('entryanswered', () => told++, true); }");
        circuit.Hold();
        await page.WaitForSelectorAsync("html[data-circuit=silent]", new() { State = WaitForSelectorState.Attached });
        await page.SelectOptionAsync(Material, new SelectOptionValue { Index = 1 }); // which waits for the circuit, and keeps no entry waiting
        await page.EnterAsync(Degrees, "9999");
        await page.HandInAsync(DegreesForm);
        await page.HandInAsync("[data-testid=sample-form]");
        await page.WaitForSelectorAsync("[data-testid=sample-form][data-freed]");
        var refused = page.Locator("#entry-queue li[data-refused]");
        await Assertions.Expect(refused).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("#entry-queue")).ToHaveAttributeAsync("data-count", "0");
        Assert.Single(await app.Running.ReadAsync("SELECT 1 FROM Readings WHERE InstrumentText = '3.57'")); // at the program, and the page does not know
        await Assertions.Expect(page.Locator("[data-testid=sample-form]")).ToHaveCountAsync(1);
        Assert.Equal(0, await page.EvaluateAsync<int>("told")); // over a dead connection it would be lost
        circuit.GoOn();

        await page.WaitForSelectorAsync("[data-testid=sample-saved]");
        await Assertions.Expect(page.Locator("[data-testid=sample-form]")).ToHaveCountAsync(0);
        await page.OpenQueueAsync();
        await Assertions.Expect(refused).ToContainTextAsync("9999");
        await page.PressUntilGoneAsync("#entry-queue li[data-refused] button", "#entry-queue li[data-refused]");
        await Assertions.Expect(page.Locator("#entry-queue")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Entry_AtWhichTheProgramFails_HoldsNothingBackAndIsSentAgainByHand()
    {
        await using var context = await chromium.TabletAsync(app.Running.Address, "Pacific/Auckland");
        var page = await context.SignInAsync("henning");
        await page.OpenAsync(await app.HeatAsync(page));
        await page.RouteAsync("**/api/v1/entries", route => route.Request.PostData!.Contains("1446") ? route.FulfillAsync(new() { Status = 500 }) : route.ContinueAsync());
        foreach (var degrees in new[] { "1446", "1447" })
        {
            await page.EnterAsync(Degrees, degrees);
            await page.HandInAsync(DegreesForm);
            await Assertions.Expect(page.Locator(Degrees)).ToHaveValueAsync("");
        }

        await page.GetByText("1447 °C").First.WaitForAsync();
        Assert.Empty(await app.Running.ReadAsync("SELECT 1 FROM Temperatures WHERE TemperatureC = 1446"));
        await page.OpenQueueAsync();
        await Assertions.Expect(page.Locator("#entry-queue li")).ToContainTextAsync("The program could not save this");
        await Assertions.Expect(page.Locator("#entry-queue li")).ToContainTextAsync("1446\u00a0°C"); // not the bare number
        var observed = await page.EvaluateAsync<string>("() => JSON.parse(Object.entries(localStorage).find(([name]) => name.startsWith('meltshop-entry/'))[1]).observedAt");
        var there = TimeZoneInfo.ConvertTimeBySystemTimeZoneId(DateTimeOffset.Parse(observed, CultureInfo.InvariantCulture), "Europe/Berlin"); // the site's zone, whatever the tablet's is
        await Assertions.Expect(page.Locator("#entry-queue li")).ToContainTextAsync(there.ToString("HH:mm:ss", CultureInfo.InvariantCulture));
        await page.UnrouteAllAsync();

        // What is drawn anew meanwhile moves no press from under a finger.
        Assert.True(await page.EvaluateAsync<bool>("async () => { const press = document.querySelector('#entry-queue li button'); (await import('/entry/queue.js')).changed(); return press.isConnected; }"));
        await page.PressUntilGoneAsync("#entry-queue li[data-refused] button", "#entry-queue li[data-refused]");

        await Assertions.Expect(page.Locator("#entry-queue")).ToBeHiddenAsync();
        Assert.Single(await app.Running.ReadAsync("SELECT 1 FROM Temperatures WHERE TemperatureC = 1446"));
    }

    [Fact]
    public async Task Entry_OfAPageWhosePersonWasSignedOut_SaysSoAndIsSentAfterTheSignIn()
    {
        await using var context = await chromium.TabletAsync(app.Running.Address);
        var page = await context.SignInAsync("henning");
        var heat = await app.HeatAsync(page);
        await page.OpenAsync(heat);

        // What is told to a page that is open when its sign-in ends soon; then it is over.
        await page.RouteAsync("**/api/v1/entries/ticket", async route =>
        {
            var ticket = JsonNode.Parse(await (await route.FetchAsync()).TextAsync())!;
            ticket["until"] = (long)ticket["now"]! + 600_000;
            await route.FulfillAsync(new() { ContentType = "application/json", Body = ticket.ToJsonString() });
        });
        await page.EvaluateAsync("import('/entry/sending.js').then((sending) => sending.fetchTicket())");
        await Assertions.Expect(page.Locator("[data-testid=sign-in-ends]")).ToContainTextAsync("Your sign-in here ends at");
        await page.UnrouteAllAsync();
        await context.ClearCookiesAsync();
        await page.EnterAsync(Degrees, "1448");
        await page.HandInAsync(DegreesForm);
        await Assertions.Expect(page.Locator(Degrees)).ToHaveValueAsync("");
        await page.EnterAsync(Degrees, "1450"); // and not handed in
        await Assertions.Expect(page.Locator("[data-testid=sign-in-ends]")).ToBeHiddenAsync();
        await page.PressUntilAsync("[data-testid=sign-in-again] a", "input[name=password]");

        await page.FillAsync("input[name=name]", "henning");
        await page.FillAsync("input[name=password]", Demo.Password);
        await page.ClickAsync("button[type=submit]");
        await page.IsAtAsync(heat);

        await page.GetByText("1448 °C").First.WaitForAsync();
        await Assertions.Expect(page.Locator("[data-testid=sign-in-again]")).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator(Degrees)).ToHaveValueAsync("1450");
        Assert.Single(await app.Running.ReadAsync("SELECT 1 FROM Temperatures WHERE TemperatureC = 1448"));
    }

    /// <summary>What the circuit brings late takes nothing from what a person has pressed, chosen or begun.</summary>
    private static async Task HurryAsync(IPage page, HeldCircuit circuit)
    {
        await page.EvaluateAsync(Hands);

        // A row is pressed and its mass entered before the circuit has heard of the press.
        var (weighed, chosen) = (page.Locator("[data-testid=weighed]"), page.Locator("[data-testid=weighings] tr.chosen"));
        await chosen.WaitForAsync();
        var last = await page.Locator("[data-testid=weighings] .row-press strong").Last.InnerTextAsync();
        await page.EvaluateAsync("(kg) => { [...document.querySelectorAll('[data-testid=weighings] .row-press')].at(-1).click(); enter(document.querySelector(kg), '0.5'); }", Kg);
        await Assertions.Expect(weighed).ToContainTextAsync(last);

        // A mass is begun, and another weighs all that was wanted of its material.
        await page.Locator("[data-testid=weighings] .row-press").First.TapAsync();
        await page.WaitForSelectorAsync("[data-testid=weighings] tbody tr.chosen:first-child");
        var first = await chosen.Locator("strong").InnerTextAsync();
        var target = (await chosen.Locator("[data-heading=Target]").InnerTextAsync()).Split('\u00a0')[0];
        await page.EvaluateAsync("""
            async ([kg, target]) => {
              const { deliver } = await import("/entry/sending.js");
              const { form } = document.querySelector(kg);
              type(document.querySelector(kg), "1");
              deliver({ operation: form.dataset.entry, about: JSON.parse(form.dataset.about), fields: { materialId: form.querySelector("select").value, kg: target }, title: "", address: "/" });
            }
            """, new[] { Kg, target });
        await page.WaitForSelectorAsync("[data-testid=weighings] tbody tr:first-child [data-standing=done]");
        await page.EvaluateAsync("(kg) => enter(document.querySelector(kg), '1.5')", Kg);
        await Assertions.Expect(weighed).ToContainTextAsync(first);

        // The next entry is handed in, and the one after it begun, before the first is answered; and while the circuit does not answer.
        await page.EvaluateAsync("(degrees) => { const field = document.querySelector(degrees); enter(field, '1451'); enter(field, '1452'); type(field, '145'); }", Degrees);
        await page.GetByText("1451 °C").First.WaitForAsync();
        await page.GetByText("1452 °C").First.WaitForAsync();
        await Assertions.Expect(page.Locator(Degrees)).ToHaveValueAsync("145");
        circuit.Hold();
        await page.EvaluateAsync("(degrees) => enter(document.querySelector(degrees), '1453')", Degrees);
        await Assertions.Expect(page.Locator(Degrees)).ToHaveValueAsync("");
        await page.EnterAsync(Degrees, "146");
        circuit.GoOn();
        await page.GetByText("1453 °C").First.WaitForAsync();
        await Assertions.Expect(page.Locator(Degrees)).ToHaveValueAsync("146");
        await Assertions.Expect(page.Locator("[data-testid=rest-planning]")).ToHaveCountAsync(0);
    }
}

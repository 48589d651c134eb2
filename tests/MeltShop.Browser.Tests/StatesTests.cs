using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>
/// The pages in the states that a demo foundry is not in: a shop on its first day, a database that fails, lists that are long. Each is measured,
/// read by axe and kept as a picture. Programs of their own.
/// </summary>
public sealed class StatesTests(Chromium chromium)
{
    /// <summary>What a person is, and how somebody signs in, has to be read for any page to come; the rest fails.</summary>
    private static readonly string[] Needed = ["People", "Person", "Role", "Sites", "DataProtectionKeys", "__EF"];

    /// <summary>They read nothing of a shop.</summary>
    private static readonly string[] Documents = ["/sign-in", "/first-administrator", "/me", "/station", "/look", "/parts", "/not-found"];

    /// <summary>They read nothing before it is asked for, or nothing but what has to be readable anyway; a form for something new has nothing to read.</summary>
    private static readonly string[] Unread = ["/find", "/people", "/recall", "/shop", "/topping-up"];

    /// <summary>One record, forms, a calculation, and a plan of one heat: none has a list that grows with a shop.</summary>
    private static readonly string[] Listless =
        ["/grades/1", "/grades/new", "/orders/1", "/yard/new", "/joint-pour", "/topping-up", "/import/map", "/heats/1/correction", "/heats/1/weighing", "/heats/999999", "/shop"];

    /// <summary>Where there is nothing to show, a notice says so in a sentence and has a press that leads on; any other page has something to press or to fill in.</summary>
    private const string SaysWhatToDo = """
        () => {
          const has = (part, what) => [...part.querySelectorAll(what)].some(one => one.checkVisibility());
          const nothing = document.querySelector('main [data-state=empty], main [data-state=missing]');
          if (!nothing) return has(document.querySelector('main'), 'a[href], button:enabled, input:enabled, select:enabled');
          return [...nothing.querySelectorAll('.notice')].some(notice => notice.querySelector('.notice-heading').textContent.trim() !== ''
            && notice.querySelector('p').textContent.trim().split(/\s+/).length >= 4 && has(notice, 'a[href], button:enabled'));
        }
        """;

    private static IEnumerable<string> Reading => Places.All.Where(path => !Documents.Any(document => path.StartsWith(document, StringComparison.Ordinal)));

    [Fact]
    public async Task Pages_OfAShopOnItsFirstDay_SayWhatToDoAndLeadToAPlan()
    {
        await using var app = new RunningApp();
        await app.StartAsync(("MeltShop__Demo", "false"));
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.FirstAdministratorAsync(app);

        AssertNone(await VisitAsync(page, Reading, "empty"));
        Assert.Equal("Sign out", await page.Locator(".rail-person form button").InnerTextAsync());
        Assert.True(await page.EvaluateAsync<bool>("document.querySelector('.rail').scrollHeight <= innerHeight"), "who has every role does not see all of the rail");
        await page.SetUpAsync();
    }

    [Fact]
    public async Task Pages_WithLongListsThenWaitingForTheirRecordsAndThenWithoutThem_SaySo()
    {
        await using var database = await ShopDatabase.PostgresAsync();
        await using var app = new RunningApp();
        await app.StartAsync(database.Settings);
        await LongLists.WriteAsync(database);
        await using var context = await chromium.TabletAsync(app.Address);
        await using var office = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("ruta");

        var lists = Reading.Except(Listless).ToLookup(Places.IsAdministered);
        AssertNone(await LongAsync(page, lists[false]));
        AssertNone(await LongAsync(await office.SignInAsync("maren"), lists[true]));

        var tables = await database.ReadAsync<string>("SELECT tablename::text FROM pg_tables WHERE schemaname = 'public'");
        await using var held = await database.HoldAsync(tables.Where(name => !Needed.Any(needed => name.StartsWith(needed, StringComparison.Ordinal))));
        AssertNone(await WaitAndFailAsync(page, held));
    }

    private static void AssertNone(List<string> faults) => Assert.True(faults.Count == 0, string.Join('\n', faults));

    /// <summary>More rows of what axe has read in the short ones: they have to fit, to be large enough, and to say where they stop.</summary>
    private static async Task<List<string>> LongAsync(IPage page, IEnumerable<string> paths)
    {
        var faults = new List<string>();
        foreach (var path in paths)
        {
            await page.VisitAsync(LongLists.Asked.GetValueOrDefault(path, path));
            faults.AddRange(await FaultsAsync(page, path, "long"));
            if (await page.Locator("main select:visible").EvaluateAllAsync<bool>("all => all.some(one => one.options.length > 61 && !one.closest('[data-field]')?.querySelector('.narrow-choices'))"))
                faults.Add($"{path} has a long choice that cannot be narrowed");
            if (!LongLists.Cut.TryGetValue(path, out var note))
            {
                if (await page.Locator("main :is(tr, li, .card, option, [data-cell], [data-instrument])").CountAsync() < 30) faults.Add($"{path} has no long list");
            }
            else if (!await page.Locator(note).First.IsVisibleAsync())
            {
                faults.Add($"{path} does not say where it stops");
            }
        }

        return faults;
    }

    /// <summary>A page while it is loading; then what it waits for fails.</summary>
    private static async Task<List<string>> WaitAndFailAsync(IPage page, HeldTables held)
    {
        var faults = new List<string>();
        foreach (var path in Reading)
        {
            await page.GotoAsync(path);
            await page.WaitForSelectorAsync("main h1, [data-testid=state]");
            if (await page.Locator("[data-state=loading]").CountAsync() == 0)
            {
                if (!path.EndsWith("/new", StringComparison.Ordinal) && !Unread.Any(page => path.StartsWith(page, StringComparison.Ordinal))) faults.Add($"{path} does not wait for its records");
            }
            else
            {
                faults.AddRange([.. await page.FaultsAsync(), .. await AxeFindings.InBothThemesAsync(page)]);
                await page.KeepAsync($"{Places.Name(path)}-tablet-loading");
                while (await page.Locator("[data-state=loading]").CountAsync() > 0) await held.BreakAsync();
                await Assertions.Expect(page.Locator("[data-state=failed] [role=alert] button")).ToBeVisibleAsync();
                faults.AddRange([.. await FaultsAsync(page, path, "failed"), .. await AxeFindings.InBothThemesAsync(page)]); // only a page that did fail is kept as one
            }
        }

        return faults;
    }

    private static async Task<List<string>> VisitAsync(IPage page, IEnumerable<string> paths, string state)
    {
        var faults = new List<string>();
        foreach (var path in paths)
        {
            await page.VisitAsync(path);
            faults.AddRange(await FaultsAsync(page, path, state));
            faults.AddRange(await AxeFindings.InBothThemesAsync(page));
        }

        return faults;
    }

    private static async Task<List<string>> FaultsAsync(IPage page, string path, string state)
    {
        var faults = new List<string>(await page.FaultsAsync());
        if (await page.Locator("h1").CountAsync() != 1) faults.Add($"{path} has not one heading");
        if (state == "empty" && !await page.EvaluateAsync<bool>(SaysWhatToDo)) faults.Add($"{path} does not say what to do");
        if (state == "long" && await page.Locator(".as-of").CountAsync() == 0) faults.Add($"{path} does not say how old it is");
        await page.KeepAsync($"{Places.Name(path)}-tablet-{state}");
        return faults;
    }
}

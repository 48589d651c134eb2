using System.Text.RegularExpressions;
using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>
/// The pages in the states that a demo foundry is not in: a shop on its first day; one that is large and weighs in pounds; a database that
/// fails. Each page is measured, read by axe in both themes and kept as a picture. Programs of their own.
/// </summary>
public sealed partial class StatesTests(Chromium chromium)
{
    /// <summary>What a person is, and how somebody signs in, has to be read for any page to come; the rest fails.</summary>
    private static readonly string[] Needed = ["People", "Person", "Role", "Sites", "DataProtectionKeys", "__EF"];

    /// <summary>They read nothing of a shop.</summary>
    private static readonly string[] Documents = ["/sign-in", "/first-administrator", "/me", "/station", "/look", "/parts", "/not-found"];

    /// <summary>They read nothing before it is asked for, or nothing but what has to be readable anyway; a form for something new has nothing to read.</summary>
    private static readonly string[] Unread = ["/find", "/people", "/recall", "/shop", "/topping-up"];

    /// <summary>Forms, a calculation, and a plan of one heat: none has a list that grows with a shop.</summary>
    private static readonly string[] Listless = ["/grades/new", "/yard/new", "/joint-pour", "/topping-up", "/import/map", "/heats/1/correction", "/heats/1/weighing", "/heats/999999"];

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
    public async Task Pages_OfALargeShopInPoundsThenWaitingForItsRecordsAndThenWithoutThem_SaySo()
    {
        await using var database = await ShopDatabase.PostgresAsync();
        await using var app = new RunningApp();
        await app.StartAsync(database.Settings);
        await using var office = await chromium.TabletAsync(app.Address);
        var maren = await office.SignInAsync("maren");
        await ChoosePoundsAsync(maren);
        await using var floor = await chromium.TabletAsync(app.Address);
        var page = await floor.SignInAsync("henning");
        var heat = await TypeInPoundsAsync(page, database);
        await LongLists.WriteAsync(database);

        var hard = new List<string>();
        var lists = Reading.Except(Listless).Select(path => LongLists.Asked.GetValueOrDefault(path, path)).ToLookup(Places.IsAdministered);
        AssertNone(await VisitAsync(page, lists[false], "long", hard));
        AssertNone(await VisitAsync(maren, lists[true], "long", hard));
        foreach (var path in Places.All.Except(Reading.Except(Listless)).Append(heat))
        {
            await page.VisitAsync(path);
            hard.AddRange(await HardUnitsAsync(page));
        }

        AssertNone(hard);
        foreach (var (path, said) in new[] { ("/find?words=OTF-2025", "more"), ("/history", "older") })
        {
            await page.OpenAsync(path);
            await Assertions.Expect(page.Locator($"[data-testid={said}]")).ToBeVisibleAsync();
        }

        var tables = await database.ReadAsync<string>("SELECT tablename::text FROM pg_tables WHERE schemaname = 'public'");
        await using var held = await database.HoldAsync(tables.Where(name => !Needed.Any(needed => name.StartsWith(needed, StringComparison.Ordinal))));
        await using var desk = await chromium.TabletAsync(app.Address);
        AssertNone(await WaitAndFailAsync(await desk.SignInAsync("ruta"), held));
    }

    private static void AssertNone(List<string> faults) => Assert.True(faults.Count == 0, string.Join('\n', faults));

    private static async Task ChoosePoundsAsync(IPage maren)
    {
        await maren.OpenAsync("/shop");
        await maren.SelectOptionAsync("[data-field=mass] select", "Pound");
        await maren.SelectOptionAsync("[data-field=temperature] select", "Fahrenheit");
        await maren.ClickAsync("[data-testid=units-form] button[type=submit]");
        await maren.WaitForSelectorAsync("[data-testid=units-saved]");
    }

    /// <summary>What is typed in pounds and °F is kept to the last digit; answers the heat.</summary>
    private static async Task<string> TypeInPoundsAsync(IPage page, ShopDatabase database)
    {
        var heat = await page.StartHeatAsync("furnace-1");
        await page.EnterAsync("[data-testid=temperature-form] [data-field=temperatureC] input", "2650.5");
        await page.TapAsync("[data-testid=temperature-form] button[type=submit]");
        await page.GetByText("2650.5 °F").First.WaitForAsync();
        await page.EnterAsync("[data-testid=weigh-form] [data-field=kg] input", "1234.5");
        await page.TapAsync("[data-testid=weigh-form] button[type=submit]");
        await page.WaitForSelectorAsync("[data-testid=weighed]");
        Assert.Equal((2650.5 - 32) * 5 / 9, (await database.ReadAsync<double>("""SELECT "TemperatureC" FROM "Temperatures" ORDER BY "Id" DESC LIMIT 1"""))[0]);
        Assert.Equal(1234.5 * 0.45359237, (await database.ReadAsync<double>("""SELECT "Kg" FROM "Weighings" ORDER BY "Id" DESC LIMIT 1"""))[0]);
        return heat;
    }

    /// <summary>What is said in kg, °C or prices for 1000 kg nevertheless. The page of the choice names all units, and what somebody called a ladle is theirs.</summary>
    private static async Task<IEnumerable<string>> HardUnitsAsync(IPage page)
    {
        var path = new Uri(page.Url).AbsolutePath;
        if (path == "/shop") return [];
        return (await page.Locator("main").InnerTextAsync()).Split('\n').Where(line => Unit().IsMatch(Named().Replace(line, ""))).Select(line => $"{path}: {line}");
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
                faults.AddRange([.. await page.FaultsAsync(), .. await AxeFindings.AllAsync(page)]);
                await page.KeepAsync($"{Places.Name(path)}-tablet-loading");
                while (await page.Locator("[data-state=loading]").CountAsync() > 0) await held.BreakAsync();
                await Assertions.Expect(page.Locator("[data-state=failed] [role=alert] button")).ToBeVisibleAsync();
                faults.AddRange(await FaultsAsync(page, path, "failed")); // only a page that did fail is kept as one
            }
        }

        return faults;
    }

    private static async Task<List<string>> VisitAsync(IPage page, IEnumerable<string> paths, string state, List<string>? hard = null)
    {
        var faults = new List<string>();
        foreach (var path in paths)
        {
            await page.VisitAsync(path);
            faults.AddRange(await FaultsAsync(page, path, state));
            hard?.AddRange(await HardUnitsAsync(page));
        }

        return faults;
    }

    private static async Task<List<string>> FaultsAsync(IPage page, string path, string state)
    {
        var faults = new List<string>(await page.FaultsAsync());
        if (await page.Locator("h1").CountAsync() != 1) faults.Add($"{path} has not one heading");
        await page.KeepAsync($"{Places.Name(path)}-tablet-{state}");
        faults.AddRange(await AxeFindings.InBothThemesAsync(page));
        return faults;
    }

    [GeneratedRegex(@"Ladle \d, \d+ kg")]
    private static partial Regex Named();

    [GeneratedRegex(@"\bkg\b|°C|\bK/min\b|/t\b")]
    private static partial Regex Unit();
}

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
    private const int Many = 600;

    /// <summary>What a person is, and how somebody signs in, has to be read for any page to come; the rest fails.</summary>
    private static readonly string[] Needed = ["People", "Person", "Role", "Sites", "DataProtectionKeys", "__EF"];

    /// <summary>They read nothing of a shop.</summary>
    private static readonly string[] Documents = ["/sign-in", "/first-administrator", "/me", "/station", "/look", "/parts", "/not-found"];

    /// <summary>They read nothing before it is asked for, or nothing but what has to be readable anyway; a form for something new has nothing to read.</summary>
    private static readonly string[] Unread = ["/find", "/people", "/recall", "/shop", "/topping-up"];

    private static IEnumerable<string> Reading => Places.All.Where(path => !Documents.Any(document => path.StartsWith(document, StringComparison.Ordinal)));

    [Fact]
    public async Task Pages_OfAShopOnItsFirstDay_SayWhatToDoAndLeadToAPlan()
    {
        await using var app = new RunningApp();
        await app.StartAsync(("MeltShop__Demo", "false"));
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.FirstAdministratorAsync(app);

        Assert.Empty(await VisitAsync(page, Reading, "empty"));
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
        await database.WriteAsync(await MoreAsync(database, "Heats", "Number", "OTF-2025-"));
        await database.WriteAsync(await MoreAsync(database, "CastingOrders", "Number", "1040-"));
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("ruta");

        Assert.Empty(await VisitAsync(page, ["/history", "/orders?show=closed", "/yard", "/find?words=OTF-2025"], "long"));
        await Assertions.Expect(page.Locator("[data-testid=more]")).ToBeVisibleAsync();
        await page.OpenAsync("/history");
        await Assertions.Expect(page.Locator("[data-testid=older]")).ToBeVisibleAsync();

        var tables = await database.ReadAsync<string>("SELECT tablename::text FROM pg_tables WHERE schemaname = 'public'");
        await using var held = await database.HoldAsync(tables.Where(name => !Needed.Any(needed => name.StartsWith(needed, StringComparison.Ordinal))));
        Assert.Empty(await WaitAndFailAsync(page, held));
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
                faults.AddRange(await page.FaultsAsync());
                await page.KeepAsync($"{Places.Name(path)}-tablet-loading");
                while (await page.Locator("[data-state=loading]").CountAsync() > 0) await held.BreakAsync();
                await Assertions.Expect(page.Locator("[data-state=failed] [role=alert] button")).ToBeVisibleAsync();
                faults.AddRange(await FaultsAsync(page, path, "failed")); // only a page that did fail is kept as one
            }
        }

        return [.. faults, .. await AxeFindings.AllAsync(page)];
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
        await page.KeepAsync($"{Places.Name(path)}-tablet-{state}");
        return faults;
    }

    /// <summary>Rows like the first one of a table, each with a name of its own.</summary>
    private static async Task<string> MoreAsync(ShopDatabase database, string table, string name, string prefix)
    {
        var columns = await database.ReadAsync<string>($"SELECT column_name::text FROM information_schema.columns WHERE table_name = '{table}' AND column_name <> 'Id'");
        var values = columns.Select(column => column == name ? $"'{prefix}' || lpad(n::text, 4, '0')" : column is "EntryKey" or "Version" ? "gen_random_uuid()" : $"\"{column}\"");
        return $"INSERT INTO \"{table}\" ({string.Join(", ", columns.Select(column => $"\"{column}\""))}) "
            + $"SELECT {string.Join(", ", values)} FROM generate_series(1, {Many}) n, (SELECT * FROM \"{table}\" ORDER BY \"Id\" LIMIT 1) first";
    }
}

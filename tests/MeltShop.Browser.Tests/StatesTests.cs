using System.Text.RegularExpressions;
using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>
/// The pages in the states that a demo foundry is not in: a shop on its first day, a database that fails, lists that are long. Each is measured,
/// read by axe and kept as a picture. Programs of their own.
/// </summary>
public sealed partial class StatesTests(Chromium chromium)
{
    private const int Many = 600;

    /// <summary>What a person is, and how somebody signs in, has to be read for any page to come; the rest fails.</summary>
    private static readonly string[] Needed = ["People", "Person", "Role", "Sites", "DataProtectionKeys", "__EF", "sqlite_"];

    /// <summary>They read nothing of a shop.</summary>
    private static readonly string[] Documents = ["/sign-in", "/first-administrator", "/me", "/station", "/look", "/parts", "/not-found"];

    private static IEnumerable<string> Reading => Places.All.Where(path => !Documents.Any(document => path.StartsWith(document, StringComparison.Ordinal)));

    [Fact]
    public async Task Pages_OfAShopOnItsFirstDay_SayWhatToDo()
    {
        await using var app = new RunningApp();
        await app.StartAsync(("MeltShop__Demo", "false"));
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await FirstAdministratorAsync(context, app);

        Assert.Empty(await VisitAsync(page, Reading, "empty"));
        Assert.Equal("Sign out", await page.Locator(".rail-person form button").InnerTextAsync());
        Assert.True(await page.EvaluateAsync<bool>("document.querySelector('.rail').scrollHeight <= innerHeight"), "who has every role does not see all of the rail");
    }

    [Fact]
    public async Task Pages_WithLongListsAndThenWithoutTheirRecords_SaySoAndHaveAHeading()
    {
        await using var app = new RunningApp();
        await app.StartAsync();
        await app.WriteAsync(await MoreAsync(app, "Heats", "Number", "OTF-2025-"));
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("ruta");

        Assert.Empty(await VisitAsync(page, ["/history", "/yard", "/find?words=OTF-2025"], "long"));
        await Assertions.Expect(page.Locator("[data-testid=more]")).ToBeVisibleAsync();
        await page.OpenAsync("/history");
        await Assertions.Expect(page.Locator("[data-testid=older]")).ToBeVisibleAsync();

        var tables = await app.ReadAsync("SELECT name FROM sqlite_master WHERE type = 'table'");
        await app.WriteAsync(string.Concat(tables.Select(row => (string)row[0]).Where(name => !Needed.Any(needed => name.StartsWith(needed, StringComparison.Ordinal))).Select(name => $"ALTER TABLE \"{name}\" RENAME TO \"{name}Gone\";")));
        Assert.Empty(await VisitAsync(page, Reading, "failed"));
        await page.GotoAsync("/history");
        await Assertions.Expect(page.Locator("[data-state=failed] [role=alert] button")).ToBeVisibleAsync();
    }

    private static async Task<List<string>> VisitAsync(IPage page, IEnumerable<string> paths, string state)
    {
        var faults = new List<string>();
        foreach (var path in paths)
        {
            await page.VisitAsync(path);
            faults.AddRange(await page.FaultsAsync());
            if (await page.Locator("h1").CountAsync() != 1) faults.Add($"{path} has not one heading");
            await page.KeepAsync($"{Places.Name(path)}-tablet-{state}");
        }

        faults.AddRange(await AxeFindings.AllAsync(page));
        return faults;
    }

    private static async Task<IPage> FirstAdministratorAsync(IBrowserContext context, RunningApp app)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync("/first-administrator");
        foreach (var (field, text) in new[] { ("code", Code().Match(app.Log).Groups[1].Value), ("displayName", "Anna Example"), ("name", "anna"), ("password", Demo.Password) })
            await page.FillAsync("#" + field, text);
        await page.ClickAsync("button[type=submit]");
        await page.WaitForURLAsync("**/sign-in**");
        await page.FillAsync("input[name=name]", "anna");
        await page.FillAsync("input[name=password]", Demo.Password);
        await page.ClickAsync("button[type=submit]");
        await page.WaitForSelectorAsync("[data-testid=state]:not([data-state=loading])");
        return page;
    }

    /// <summary>Rows like the first one of a table, each with a name of its own.</summary>
    private static async Task<string> MoreAsync(RunningApp app, string table, string name, string prefix)
    {
        var columns = (await app.ReadAsync($"SELECT name FROM pragma_table_info('{table}') WHERE pk = 0")).Select(row => (string)row[0]).ToList();
        var values = columns.Select(column => column == name ? $"'{prefix}' || printf('%04d', n)" : column is "EntryKey" or "Version" ? "upper(hex(randomblob(4)) || '-0000-4000-8000-' || printf('%012d', n))" : column);
        return $"WITH RECURSIVE numbers(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM numbers WHERE n < {Many}) INSERT INTO {table} ({string.Join(", ", columns)}) "
            + $"SELECT {string.Join(", ", values)} FROM numbers, (SELECT * FROM {table} ORDER BY Id LIMIT 1);";
    }

    [GeneratedRegex("enter the code ([A-Z0-9]+)")]
    private static partial Regex Code();
}

using System.Data.Common;
using System.Globalization;
using MeltShop.Browser.Tests.Running;
using Microsoft.Data.Sqlite;
using Microsoft.Playwright;
using Npgsql;

namespace MeltShop.Browser.Tests;

/// <summary>
/// How long a page of the history takes from the press until the browser has painted it: with MELTSHOP_HEATS more heats of a hundred readings each, on either
/// database, as the long suite asks; else one press among the demo's, to see that it is measured. A time says nothing on a busy machine.
/// </summary>
[Collection<DemoAppCollection>]
public sealed class HistoryPaintTests(Chromium chromium, RunningApp demo)
{
    private const double PaintedMs = 150;
    private const int Presses = 50;

    /// <summary>Presses a link to other heats; answers the milliseconds until the frame that shows them was painted.</summary>
    private const string Press = """
        link => new Promise(painted => {
            const first = () => document.querySelector('[data-heat]')?.dataset.heat;
            const [before, pressed] = [first(), performance.now()];
            const watch = new MutationObserver(() => {
                if (!first() || first() === before) return;
                watch.disconnect();
                requestAnimationFrame(() => {
                    const behind = new MessageChannel(); // what it brings comes after the paint
                    behind.port1.onmessage = () => painted(performance.now() - pressed);
                    behind.port2.postMessage(0);
                });
            });
            watch.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
            setTimeout(() => painted(-1), 180000); // they never came
            document.querySelector(link).click();
        })
        """;

    private static int? Wanted => int.TryParse(Environment.GetEnvironmentVariable("MELTSHOP_HEATS"), out var count) ? count : null;

    [Fact]
    public async Task History_OtherHeatsPressedFor_ArePaintedInTime()
    {
        await using var context = await chromium.DeskAsync(demo.Address);
        var page = await context.SignInAsync("ruta");
        await page.OpenAsync("/history?number=none");
        await page.WaitForSelectorAsync("[data-testid=nothing-found]");
        Assert.True(await page.EvaluateAsync<double>(Press, "a.press[href='/history']") > 0);

        if (Wanted is not { } heats) return;
        var p95 = new List<double>();
        await using (var app = new RunningApp())
        {
            p95.Add(await MeasureAsync(
                app, heats, [], () => new SqliteConnection($"Data Source={app.Database};Pooling=False"), "SELECT name FROM pragma_table_info('{0}')",
                "char(65 + n.i % 25)", "635872032000000000 + n.i * 18000000000"));
        }

        await using var database = await ShopDatabase.PostgresAsync();
        await using var other = new RunningApp();
        p95.Add(await MeasureAsync(
            other, heats, database.Settings, () => new NpgsqlConnection(database.Settings[1].Value + ";Pooling=False"), "SELECT column_name::text FROM information_schema.columns WHERE table_name = '{0}'",
            "chr((65 + n.i % 25)::int)", "timestamptz '2016-01-01 00:00:00+00' + n.i * interval '30 minutes'"));
        await other.KillAsync();
        Assert.All(p95, ms => Assert.True(ms <= PaintedMs, $"{ms} ms"));
    }

    /// <summary>Answers the 95th percentile, ms.</summary>
    private async Task<double> MeasureAsync(RunningApp app, int heats, (string, string)[] settings, Func<DbConnection> connect, string columns, string element, string startedAt)
    {
        await app.StartAsync(settings);
        await app.KillAsync();
        await using (var connection = connect())
        {
            await connection.OpenAsync(TestContext.Current.CancellationToken);
            await FillAsync(connection, heats, columns, element, startedAt);
        }

        await app.StartAsync(settings);
        await using var context = await chromium.DeskAsync(app.Address);
        var page = await context.SignInAsync("ruta");
        var times = new List<double>();
        foreach (var from in new[] { "/history", "/history?to=2018-06-01" })
        {
            await page.OpenAsync(from);
            await Assertions.Expect(page.Locator("[data-heat]")).ToHaveCountAsync(50);
            for (var n = 0; n < 10 + Presses; n++)
            {
                var ms = await page.EvaluateAsync<double>(Press, "[data-testid=older]");
                Assert.True(ms > 0, "no older heats were painted");
                if (n >= 10) times.Add(ms);
            }
        }

        times.Sort();
        var (median, p95) = (times[times.Count / 2], times[times.Count * 95 / 100]);
        TestContext.Current.TestOutputHelper!.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{(settings.Length == 0 ? "SQLite" : "PostgreSQL")}, {heats * 100} readings, {times.Count} pages from the press to the paint: median {median:F1} ms, p95 {p95:F1} ms (bar {PaintedMs} ms)"));
        return p95;
    }

    private static async Task FillAsync(DbConnection connection, int heats, string columns, string element, string startedAt)
    {
        var (heat, sample, burn) = (await LastAsync("Heats"), await LastAsync("Samples"), await LastAsync("Burns"));
        await MultiplyAsync("Heats", heats, ("Number", "'OTF-2016-' || n.i"), ("StartedAt", startedAt), ("State", "'Closed'"));
        await MultiplyAsync("TreatedLadles", heats * 3, ("HeatId", $"{heat} + 1 + n.i / 3"), ("Ordinal", "n.i % 3 + 1"), ("State", "'Released'"));
        await MultiplyAsync("Samples", heats, ("HeatId", $"{heat} + 1 + n.i"), ("CoinOnItsWayId", "NULL"));
        await MultiplyAsync("Burns", heats * 4, ("SampleId", $"{sample} + 1 + n.i / 4"), ("Ordinal", "n.i % 4 + 1"));
        await MultiplyAsync("Readings", heats * 100, ("BurnId", $"{burn} + 1 + n.i / 25"), ("Element", element));
        await SendAsync("ANALYZE");

        async Task<long> LastAsync(string table) => Convert.ToInt64((await AskAsync($"SELECT MAX(\"Id\") FROM \"{table}\""))[0], CultureInfo.InvariantCulture);

        async Task MultiplyAsync(string table, int count, params (string Column, string Value)[] own)
        {
            var names = (await AskAsync(string.Format(CultureInfo.InvariantCulture, columns, table))).Cast<string>().Where(name => name != "Id").ToList();
            var values = names.Select(name => own.FirstOrDefault(o => o.Column == name).Value ?? $"h.\"{name}\"");
            await SendAsync(
                $"WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < {count - 1}) "
                + $"INSERT INTO \"{table}\" ({string.Join(", ", names.Select(name => $"\"{name}\""))}) SELECT {string.Join(", ", values)} FROM n, (SELECT * FROM \"{table}\" ORDER BY \"Id\" LIMIT 1) AS h");
        }

        async Task SendAsync(string statement)
        {
            await using var command = Command(statement);
            await command.ExecuteNonQueryAsync(TestContext.Current.CancellationToken);
        }

        async Task<List<object>> AskAsync(string question)
        {
            await using var command = Command(question);
            await using var reader = await command.ExecuteReaderAsync(TestContext.Current.CancellationToken);
            var values = new List<object>();
            while (await reader.ReadAsync(TestContext.Current.CancellationToken)) values.Add(reader.GetValue(0));
            return values;
        }

        DbCommand Command(string text)
        {
            var command = connection.CreateCommand();
#pragma warning disable CA2100 // the test's own statements
            command.CommandText = text;
#pragma warning restore CA2100
            command.CommandTimeout = 0;
            return command;
        }
    }
}

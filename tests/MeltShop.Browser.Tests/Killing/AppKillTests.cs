using System.Diagnostics;
using System.Globalization;
using MeltShop.Browser.Tests.Running;

namespace MeltShop.Browser.Tests.Killing;

/// <summary>
/// What was acknowledged is there after the program was killed, at whatever moment, and what was not comes once when it is sent again.
/// As many kills on each database as MELTSHOP_KILLS says, else 3 on SQLite and 2 on PostgreSQL.
/// </summary>
public sealed class AppKillTests(Chromium chromium) : IAsyncDisposable
{
    private const int Seed = 1126;
    private static readonly TimeSpan UsableWithin = TimeSpan.FromSeconds(10);
    private readonly RunningApp app = new();

    private static bool IsLong => Wanted is not null;

    private static int? Wanted => int.TryParse(Environment.GetEnvironmentVariable("MELTSHOP_KILLS"), out var count) ? count : null;

    public ValueTask DisposeAsync() => app.DisposeAsync();

    [Fact]
    public async Task Shift_WithTheProgramKilledAtRandomMoments_LosesNothingThatWasAcknowledgedOnSqlite()
    {
        await using var database = ShopDatabase.Sqlite(app);
        await ShiftAsync(database, Wanted ?? 3);
    }

    [Fact]
    public async Task Shift_WithTheProgramKilledAtRandomMoments_LosesNothingThatWasAcknowledgedOnPostgres()
    {
        await using var database = await ShopDatabase.PostgresAsync();
        await ShiftAsync(database, Wanted ?? 2);
        await app.KillAsync();
    }

    private async Task ShiftAsync(ShopDatabase database, int kills)
    {
        var random = new Random(Seed);
        var tablets = await BeginAsync(database);
        var slowest = TimeSpan.Zero;
        for (var kill = 1; kill <= kills; kill++)
        {
            using var cut = new CancellationTokenSource();
            var work = Task.WhenAll(tablets.Select(tablet => Task.Run(() => tablet.WorkAsync(cut.Token))));
            await Task.Delay(random.Next(200, 1200), TestContext.Current.CancellationToken);
            await app.KillAsync();
            await cut.CancelAsync();
            await work;

            var down = Stopwatch.GetTimestamp();
            await app.StartAsync(database.Settings);
            foreach (var tablet in tablets) await tablet.EnterAsync();
            slowest = Stopwatch.GetElapsedTime(down) is var took && took > slowest ? took : slowest;
            await AssertNothingIsLostOrHalfAsync(database, tablets, kill);
        }

        var (code, words) = await app.CommandAsync(["verify"], database.Settings);
        Assert.True(code == 0, words);
        TestContext.Current.TestOutputHelper!.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"seed {Seed}: {kills} kills, {tablets.Sum(t => t.Acknowledged.Count)} entries acknowledged, usable again within {slowest.TotalSeconds:F1} s"));
        if (IsLong) Assert.True(slowest <= UsableWithin, $"usable again after {slowest}"); // a busy machine of the short suite would make it lie
        foreach (var tablet in tablets) tablet.Dispose();
    }

    private async Task<List<Tablet>> BeginAsync(ShopDatabase database)
    {
        await app.StartAsync(database.Settings);
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        var heat = await page.StartHeatAsync("furnace-1");
        var heatId = long.Parse(heat.Split('/')[^1], CultureInfo.InvariantCulture);
        var material = (await database.ReadAsync<long>("""SELECT "Id" FROM "Materials" ORDER BY "Id" LIMIT 1"""))[0];
        var cookies = await Tablet.CookiesAsync(context);
        return [.. Enumerable.Range(0, 4).Select(_ => new Tablet(app.Address, cookies, heatId, material))];
    }

    /// <summary>Every key that was answered for is there once; a weight has its stock and its metal, a coin its burns and their values.</summary>
    private static async Task AssertNothingIsLostOrHalfAsync(ShopDatabase database, List<Tablet> tablets, int kill)
    {
        var where = $"seed {Seed}, kill {kill}";
        foreach (var (operation, table) in new[] { ("WeighIn", "Weighings"), ("RecordTemperature", "Temperatures"), ("RecordSample", "Samples") })
        {
            var kept = await database.ReadAsync<Guid>($"SELECT \"EntryKey\" FROM \"{table}\"");
            var lost = tablets.SelectMany(t => t.Acknowledged).Where(e => e.Operation == operation).Select(e => e.Key).Except(kept).ToList();
            Assert.True(lost.Count == 0, $"{where}: {lost.Count} acknowledged of {operation} are lost");
            Assert.Equal(kept.Count, kept.Distinct().Count());
        }

        foreach (var half in new[]
                 {
                     """SELECT w."Id" FROM "Weighings" w WHERE NOT EXISTS (SELECT 1 FROM "StockFacts" s WHERE s."EntryKey" = w."EntryKey")""",
                     """SELECT w."Id" FROM "Weighings" w WHERE NOT EXISTS (SELECT 1 FROM "FurnaceMetals" m WHERE m."EntryKey" = w."EntryKey")""",
                     """SELECT s."Id" FROM "Samples" s WHERE NOT EXISTS (SELECT 1 FROM "Burns" b WHERE b."SampleId" = s."Id")""",
                     """SELECT b."Id" FROM "Burns" b WHERE NOT EXISTS (SELECT 1 FROM "Readings" r WHERE r."BurnId" = b."Id")""",
                 })
        {
            Assert.True((await database.ReadAsync<long>(half)).Count == 0, $"{where}: half an entry: {half}");
        }
    }
}

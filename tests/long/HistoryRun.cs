using System.Diagnostics;
using MeltShop.Records;
using MeltShop.Records.Databases;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading.History;
using MeltShop.Records.Sites;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Texts;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Long;

/// <summary>
/// The history page over ten million readings (100,000 heats with three ladles each; MELTSHOP_HISTORY_HEATS says another number), on both databases: its
/// own query with all that it reads beside the heats, against the bare statement for the same fifty, and read and drawn as a circuit draws it, without the
/// way to the browser. Needs MELTSHOP_TEST_POSTGRES and some 3 GB of disk, which it gives back.
/// </summary>
internal static class HistoryRun
{
    private const double DrawnMs = 150;
    private const int ReadingsOfAHeat = 100;
    private const int Rounds = 500;
    private const int Seed = 1125;

    private static readonly int Heats = int.TryParse(Environment.GetEnvironmentVariable("MELTSHOP_HISTORY_HEATS"), out var count) ? count : 100_000;

    private static readonly DateTimeOffset Start = new(2016, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static async Task<bool> Run()
    {
        var folder = Directory.CreateTempSubdirectory("meltshop-history-");
        var name = $"history_{Guid.NewGuid():N}";
        var server = Environment.GetEnvironmentVariable("MELTSHOP_TEST_POSTGRES") ?? throw new InvalidOperationException("MELTSHOP_TEST_POSTGRES is not set.");
        try
        {
            await OnServer(server, $"CREATE DATABASE {name}");
            var sqlite = new RecordsOptions { Provider = RecordsProvider.Sqlite, ConnectionString = $"Data Source={Path.Combine(folder.FullName, "shop.db")};Pooling=True" };
            var postgres = new RecordsOptions { Provider = RecordsProvider.Postgres, ConnectionString = $"{server};Database={name};Command Timeout=0" };
            return await Measure(sqlite, 5) & await Measure(postgres, 15);
        }
        finally
        {
            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            folder.Delete(recursive: true);
            await OnServer(server, $"DROP DATABASE IF EXISTS {name} WITH (FORCE)");
        }
    }

    private static async Task<bool> Measure(RecordsOptions options, double barMs)
    {
        await RecordsDatabase.MigrateAsync(options);
        var contexts = new ContextFactory(options);
        await Fill(contexts);
        var (page, random) = (new HistoryPage(contexts), new Random(Seed));
        var (pages, bare, drawn) = (new double[Rounds], new double[Rounds], new double[Rounds]);
        await using var services = new ServiceCollection().AddLogging().AddMeltShopTexts().AddMeltShopRecords(options).AddSingleton<ShopSite>().BuildServiceProvider();
        for (var i = -50; i < Rounds; i++)
        {
            var place = new HistoryPlace(Start.AddMinutes(random.Next(100, Heats) * 30d), long.MaxValue);
            var bareTime = await Time(() => Bare(contexts, place));
            var pageTime = await Time(() => page.Load(new(), place));
            DrawnHistory.Place = place;
            var drawnTime = await Time(() => Draw(services));
            if (i >= 0) (bare[i], pages[i], drawn[i]) = (bareTime, pageTime, drawnTime);
        }

        var (floor, mine, whole) = (Timing.Of(bare), Timing.Of(pages), Timing.Of(drawn));
        Console.WriteLine($"{options.Provider}, seed {Seed}, {Heats * ReadingsOfAHeat} readings: bare {floor}; page {mine} (bar of p95 {barMs} ms); "
            + $"ratio median {mine.Median / floor.Median:F1}, p95 {mine.P95 / floor.P95:F1}; read and drawn {whole} (bar of p95 {DrawnMs} ms)");
        return mine.P95 <= barMs && whole.P95 <= DrawnMs;
    }

    private static async Task Draw(IServiceProvider services)
    {
        await using var circuit = new GridRenderer(services, services.GetRequiredService<ILoggerFactory>());
        await circuit.Draw<DrawnHistory>();
    }

    private static async Task<int> Bare(ContextFactory contexts, HistoryPlace place)
    {
        await using var db = contexts.CreateDbContext();
        await db.Database.OpenConnectionAsync();
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = """
            SELECT "Id", "Number", "State", "StartedAt", "ClosedAt", "GradeId", "FurnaceId" FROM "Heats"
            WHERE "StartedAt" <= @place ORDER BY "StartedAt" DESC, "Id" DESC LIMIT 51
            """;
        var parameter = command.CreateParameter();
        parameter.ParameterName = "@place";
        parameter.Value = db.Database.IsSqlite() ? place.StartedAt.UtcTicks : place.StartedAt;
        command.Parameters.Add(parameter);
        var read = 0;
        await using var reader = await command.ExecuteReaderAsync();
        while (await reader.ReadAsync()) read++;
        return read;
    }

    private static async Task Fill(ContextFactory contexts)
    {
        await using var db = contexts.CreateDbContext();
        var person = new Person { DisplayName = "Ida Anders", UserName = "ida", NormalizedUserName = "IDA" };
        var site = new Site { Code = "T", Name = "Talbrück", TimeZone = "Europe/Berlin", Currency = "EUR" };
        var furnace = new Furnace { Code = "F", Name = "Furnace", CapacityKg = 6000, PowerKw = 3500 };
        var grade = new Grade { Code = "G", Family = IronFamily.Ductile, Source = "invented" };
        var entry = new Records.Keeping.Entry { Key = Guid.NewGuid(), Operation = "Fill", PersonId = 1, EnteredAt = Start, Result = "1" };
        db.AddRange(person, site, furnace, grade, entry);
        await db.SaveChangesAsync();
        var plan = new Plan
        {
            EntryKey = entry.Key, PersonId = person.Id, ObservedAt = Start, EnteredAt = Start, FurnaceId = furnace.Id, GradeId = grade.Id, MeltKg = 5000,
            Problem = "{}", Answer = "{}", Versions = "{}", TotalCost = 1,
        };
        db.Add(plan);
        await db.SaveChangesAsync();
        var heat = new Heat
        {
            Number = "T-first", SiteId = site.Id, FurnaceId = furnace.Id, GradeId = grade.Id, PlanId = plan.Id, State = HeatState.Closed,
            StartedAt = Start.AddDays(-1), HeelKg = 0,
        };
        db.Add(heat);
        await db.SaveChangesAsync();
        var ladle = new Ladle
        {
            Code = "L", Name = "Ladle", Process = "pocket", FillLimitKg = 1000, PocketKg = 50, MgRecoveryPercent = 50, MgFadePercentPerMinute = 0.001,
            HeatLossKPerMinute = 5, FiguresSource = "invented",
        };
        db.Add(ladle);
        await db.SaveChangesAsync();
        db.Add(new TreatedLadle { HeatId = heat.Id, LadleId = ladle.Id, Ordinal = 1, State = TreatedLadleState.Released });
        await db.SaveChangesAsync();
        var sample = new Records.Laboratory.Sample
        {
            EntryKey = entry.Key, PersonId = person.Id, ObservedAt = Start, EnteredAt = Start, HeatId = heat.Id, Kind = Records.Laboratory.SampleKind.Bath,
            Burns = [new() { Ordinal = 1, Readings = [new() { Element = Metallurgy.Elements.Element.C, Percent = 3.61, InstrumentText = "3.61" }] }],
        };
        db.Add(sample);
        await db.SaveChangesAsync();
        var started = db.Database.IsSqlite() ? $"{Start.UtcTicks} + n.i * {30 * TimeSpan.TicksPerMinute}" : "timestamptz '2016-01-01 00:00:00+00' + n.i * interval '30 minutes'";
        await Multiply(db, typeof(Heat), Heats, ("Number", "'T-' || n.i"), ("StartedAt", started));
        await Multiply(db, typeof(TreatedLadle), Heats * 3, ("HeatId", $"{heat.Id} + 1 + n.i / 3"), ("Ordinal", "n.i % 3 + 1"));
        await Multiply(db, typeof(Records.Laboratory.Sample), Heats, ("HeatId", $"{heat.Id} + n.i"));
        await Multiply(db, typeof(Records.Laboratory.Burn), Heats * 4, ("SampleId", $"{sample.Id} + n.i / 4"), ("Ordinal", "n.i % 4 + 2"));
        var element = db.Database.IsSqlite() ? "char(65 + n.i % 25)" : "chr((65 + n.i % 25)::int)";
        await Multiply(db, typeof(Records.Laboratory.Reading), Heats * ReadingsOfAHeat, ("BurnId", $"{sample.Burns[0].Id} + 1 + n.i / 25"), ("Element", element));
        // As the database leaves them after the night; its own cleaning would else run into the measurement.
        if (!db.Database.IsSqlite()) await db.Database.ExecuteSqlRawAsync("VACUUM");
        await db.Database.ExecuteSqlRawAsync("ANALYZE");
    }

    /// <summary>So many rows like the first of a table, with these values of their own.</summary>
    private static async Task Multiply(RecordsContext db, Type type, int count, params (string Column, string Value)[] own)
    {
        var entity = db.Model.FindEntityType(type)!;
        var columns = entity.GetProperties().Select(p => p.GetColumnName()).Where(c => c != "Id").ToList();
        var values = columns.Select(c => own.FirstOrDefault(o => o.Column == c).Value ?? $"h.\"{c}\"");
#pragma warning disable EF1002, EF1003 // names of the model
        await db.Database.ExecuteSqlRawAsync($"""
            WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < {count - 1})
            INSERT INTO "{entity.GetTableName()}" ({string.Join(", ", columns.Select(c => $"\"{c}\""))})
            SELECT {string.Join(", ", values)} FROM n, (SELECT * FROM "{entity.GetTableName()}" ORDER BY "Id" LIMIT 1) AS h
            """);
#pragma warning restore EF1002, EF1003
    }

    private static async Task OnServer(string server, string statement)
    {
        await using var connection = new Npgsql.NpgsqlConnection(server + ";Pooling=False;Command Timeout=0");
        await connection.OpenAsync();
#pragma warning disable CA2100 // a name of our own
        await using var command = new Npgsql.NpgsqlCommand(statement, connection);
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }

    private static async Task<double> Time(Func<Task> action)
    {
        var started = Stopwatch.GetTimestamp();
        await action();
        return Stopwatch.GetElapsedTime(started).TotalMilliseconds;
    }
}

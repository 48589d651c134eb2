using System.Diagnostics;
using System.Globalization;
using System.Text;
using MeltShop.Operations.Importing;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Importing.Rows;
using MeltShop.Operations.Importing.Subjects;
using MeltShop.Operations.Importing.Taking;
using MeltShop.Operations.Tests.Importing.Corrupted;
using MeltShop.Records;
using MeltShop.Records.Importing;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Long;

/// <summary>
/// Imports: 20,000 damaged files without a crash, a hang or half an import; rows read and validated a second; and storing against the bare bulk
/// insert of the same rows into a copy of the same database. Needs MELTSHOP_TEST_POSTGRES.
/// </summary>
internal static class ImportRun
{
    private const int Damaged = 20_000, Stored = 300, Rows = 60_000, Elements = 10, Rounds = 5;

    private static readonly string[] Symbols = ["C", "Si", "Mn", "P", "S", "Cr", "Ni", "Cu", "Sn", "Mg"];

    private static readonly TimeZoneInfo Zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/Berlin");

    private static ColumnMap Map { get; } = SampleFiles.Map with
    {
        Columns =
        [
            .. SampleFiles.Map.Columns.Where(c => c.Role is not (ColumnRole.Element or ColumnRole.Remarks)),
            .. Symbols.Select((symbol, i) => new MappedColumn(7 + i, symbol, ColumnRole.Element, symbol)),
        ],
    };

    public static async Task<bool> Run()
    {
        var file = File();
        var isRead = Reading(file);
        var isSound = await Damage();
        var (sqlite, postgres) = (await ImportFloor.Sqlite(Measure), await ImportFloor.Postgres(Measure));
        return isRead & isSound & sqlite & postgres;

        Task<bool> Measure(ImportShop shop, Func<Task<Func<Task<double>>>> bare) => Storing(shop, file, bare);
    }

    private static bool Reading(byte[] bytes)
    {
        var seconds = Enumerable.Range(0, Rounds + 1).Select(_ => Time(() => ReadFile.Of(bytes, Map, Zone, DateTimeOffset.MaxValue))).Skip(1).Order().ToList();
        var rate = Rows / seconds[Rounds / 2];
        Console.WriteLine($"reading and validating {Rows} rows of {Elements} elements: median {seconds[Rounds / 2]:F3} s, slowest {seconds[^1]:F3} s: {rate:F0} rows/s (bar: 50000)");
        return rate >= 50_000;
    }

    /// <summary>Every damaged file is read or refused; some of them are taken in too, and each is in whole or not at all.</summary>
    private static async Task<bool> Damage()
    {
        var folder = Directory.CreateTempSubdirectory("meltshop-import-");
        await using var shop = await ImportShop.Open(ImportFloor.Options(Path.Combine(folder.FullName, "damaged.db")));
        var (faults, refused, taken) = (new List<string>(), 0, 0);
        for (var seed = 100_000; seed < 100_000 + Damaged; seed++)
        {
            var (file, fault) = await Corruption.Read(seed);
            if (fault is not null) faults.Add($"seed {seed}: {fault}");
            if (file?.Refusal is not null) refused++;
            if (file is not { Refusal: null, Samples.Count: > 0 } || taken >= Stored) continue;
            if (await Half(shop, file) is { } half) faults.Add($"seed {seed}: {half}");
            taken++;
        }

        var trail = await shop.Get<TrailCheck>().Run();
        faults.AddRange(trail.Faults.Take(3).Select(f => f.ToString()));
        Console.WriteLine($"{Damaged} damaged files from seed 100000: {refused} refused whole, {Damaged - refused} read, {taken} handed in; {faults.Count} faults");
        foreach (var fault in faults.Take(5)) Console.WriteLine(fault);
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
        return faults.Count == 0 && refused > 0 && taken == Stored;
    }

    private static async Task<string?> Half(ImportShop shop, ReadFile file)
    {
        var preview = await shop.Get<ImportDesk>().Look(file, shop.InstrumentId);
        await using var db = await shop.Db();
        var before = await CountAll(db);
        var outcome = await shop.Get<ImportSamples>().Run(ImportShop.Person, preview.Taking(Guid.NewGuid(), TimeProvider.System.GetUtcNow(), ImportWay.Folder, "damaged"));
        var wanted = outcome.Succeeded ? before.Zip(InFile(preview.Found.New), (there, came) => there + came) : before;
        return (await CountAll(db)).SequenceEqual(wanted) ? null : "half of it came in";
    }

    /// <summary>Samples, their burns, readings and figures; checks of the instrument and their readings.</summary>
    private static async Task<int[]> CountAll(RecordsContext db) =>
    [
        await db.Samples.CountAsync(), await db.Burns.CountAsync(), await db.Burns.SelectMany(b => b.Readings).CountAsync(), await db.Samples.SelectMany(s => s.Figures).CountAsync(),
        await db.ControlSamples.CountAsync(), await db.ControlSamples.SelectMany(c => c.Readings).CountAsync(),
    ];

    private static int[] InFile(IReadOnlyList<FoundSample> found)
    {
        var (samples, checks) = (found.Where(f => f.ReferenceId is null).Select(f => f.Sample).ToList(), found.Where(f => f.ReferenceId is not null).Select(f => f.Sample).ToList());
        return
        [
            samples.Count, samples.Sum(s => s.Burns.Count), samples.Sum(Readings), samples.Sum(s => s.Figures.Count),
            checks.Count, checks.Sum(Readings),
        ];

        static int Readings(ImportSample sample) => sample.Burns.Sum(burn => burn.Readings.Count);
    }

    private static async Task<bool> Storing(ImportShop shop, byte[] bytes, Func<Task<Func<Task<double>>>> bareOf)
    {
        var preview = await shop.Get<ImportDesk>().Look(ReadFile.Of(bytes, Map, Zone, DateTimeOffset.MaxValue), shop.InstrumentId);
        var started = Stopwatch.GetTimestamp();
        var outcome = await shop.Get<ImportSamples>().Run(ImportShop.Person, preview.Taking(Guid.NewGuid(), TimeProvider.System.GetUtcNow(), ImportWay.Page, "burns.csv"));
        var import = Stopwatch.GetElapsedTime(started).TotalSeconds;
        var bare = await (await bareOf())();
        Console.WriteLine($"{shop.Get<RecordsOptions>().Provider}: {outcome.Value.Rows} rows stored in {import:F2} s ({outcome.Value.Rows / import:F0} rows/s), bare bulk insert of the same rows {bare:F2} s: {bare / import:F2} of its rate (bar: 0.33)");
        return bare / import >= 1 / 3.0;
    }

    /// <summary>Samples of three burns.</summary>
    private static byte[] File()
    {
        var text = new StringBuilder("Nr;Heat;Ladle;Kind;Coin;Taken;Burn;" + string.Join(';', Symbols) + "\n");
        var start = new DateTime(2026, 3, 1, 0, 0, 0, DateTimeKind.Unspecified);
        for (var row = 0; row < Rows; row++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{row / 3};{ImportShop.HeatNumber};;second;K{row / 3};{start.AddMinutes(row / 30):yyyy-MM-dd HH:mm:ss};{(row % 3) + 1}");
            for (var i = 0; i < Elements; i++) text.Append(CultureInfo.InvariantCulture, $";{0.001 * ((row + (i * 7)) % 4000):F4}");
            text.Append('\n');
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static double Time(Action action)
    {
        var started = Stopwatch.GetTimestamp();
        action();
        return Stopwatch.GetElapsedTime(started).TotalSeconds;
    }
}

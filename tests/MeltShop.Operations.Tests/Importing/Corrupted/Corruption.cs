using System.IO.Compression;
using System.Text;
using MeltShop.Operations.Importing;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Tests.Importing.Corrupted;

/// <summary>Damages files in the ways of cut connections, full disks, foreign programs and mischief, each by its number.</summary>
public static class Corruption
{
    private static readonly DateTimeOffset Latest = new(2027, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private static readonly TimeZoneInfo Zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/Berlin");

    /// <summary>Signs that mean something to somebody who reads such files.</summary>
    private static readonly string[] Traps =
    [
        "\"", "\"\"", ";", ",", ".", "\t", "\n", "\r", "\0", "<", "<<0.1", "-", "1e308", "1e-400", "NaN", "∞", "٣", "99999999999999999999999999999999999", "0x1F", "1.234,5",
        "=1+1", "<!DOCTYPE a [<!ENTITY b \"c\">]>", "<c r=\"XFD1048576\"><v>1</v></c>", "<row r=\"1048576\"/>", "<c r=\"A-1\"/>", "t=\"s\"", "</row>", "&#0;", "\uFEFF", "2026-13-01", "2026-03-29 02:30:00",
    ];

    /// <summary>The damaged file of a number, and the map by which it is to be read: every third holds cups, wedges, grey coins and checks as well.</summary>
    public static (byte[] Bytes, ColumnMap Map) File(int seed)
    {
        var random = new Random(seed);
        var isComma = random.Next(2) == 0;
        var map = seed % 3 == 0 ? MixedFiles.Map with { DecimalSign = isComma ? DecimalSign.Comma : DecimalSign.Point } : isComma ? SampleFiles.CommaMap : SampleFiles.Map;
        var bytes = seed % 3 == 0 ? MixedFiles.Some(random, isComma ? ',' : '.')
            : random.Next(3) == 0 ? Workbook(random) : SampleFiles.Many(random.Next(1, 12), "TB-2026-0001", new(2026, 3, 2, 7, 0, 0, DateTimeKind.Unspecified), isComma ? ',' : '.');
        for (var n = random.Next(1, 5); n > 0; n--) bytes = Damaged(bytes, random);
        return (bytes, map);
    }

    /// <summary>Reads the file of a number: what came of it, and what is wrong with that. A file is read, or refused with a reason, within its time.</summary>
    public static async Task<(ReadFile? File, string? Fault)> Read(int seed)
    {
        var (bytes, map) = File(seed);
        var reading = Task.Run(() => ReadFile.Of(bytes, map, Zone, Latest));
        if (await Task.WhenAny(reading, Task.Delay(TimeSpan.FromMinutes(5))) != reading) return (null, "it hangs");
        try
        {
            return (await reading, Fault(await reading));
        }
#pragma warning disable CA1031 // whatever it throws is the fault
        catch (Exception fault)
#pragma warning restore CA1031
        {
            return (null, fault.ToString());
        }
    }

    private static string? Fault(ReadFile file)
    {
        if (file.Refusal is not null) return file.Samples.Count + file.Faults.Count + file.Rows == 0 ? null : "it is refused and holds something";
        var lines = file.Samples.SelectMany(s => s.Rows).Select(r => r.Line).ToList();
        var refused = file.Faults.Select(f => f.Line).ToHashSet();
        if (lines.Exists(refused.Contains)) return "a row counts and is refused";
        if (lines.Count + refused.Count > file.Rows) return "more rows than there are";
        if (file.Samples.Any(s => s.Rows.Any(r => r.Readings.Count == 0 == (r.Figures.Count == 0)))) return "a row of nothing, or of burns and figures at once";
        if (file.Samples.Any(s => s.Figures.Any(f => f.Value is < 0 or > 1800 || !double.IsFinite(f.Value)))) return "a figure that cannot be";
        if (file.Samples.Any(s => s.Subject.Reference is not null && s.Subject is not { Heat: null, Ladle: null, Kind: SampleKind.Bath })) return "a check of a heat";
        if (file.Samples.Any(s => s.Rows.Any(r => r.Readings.Any(v => !double.IsFinite(v.Percent) || v.Percent is < 0 or > 100)))) return "a reading that cannot be";
        if (file.Samples.Any(s => s.TakenAt > Latest)) return "a sample from the future";
        return file.Faults.Any(f => f.Code.Length == 0) ? "a row is refused without a reason" : null;
    }

    private static byte[] Workbook(Random random) => SampleFiles.Workbook(
    [
        SampleFiles.Headings.Split(';'),
        .. Enumerable.Range(0, random.Next(1, 12)).Select(i => (IReadOnlyList<object?>)
            [$"S{i}", "TB-2026-0001", null, "second", $"K{i}", new DateTime(2026, 3, 2, 7, i, 0, DateTimeKind.Unspecified), 1.0, 3.6, 1.5, null, "<20", "a note"]),
    ]);

    private static byte[] Damaged(byte[] bytes, Random random)
    {
        if (bytes.Length == 0) return bytes;
        return random.Next(7) switch
        {
            0 => [.. bytes.Take(random.Next(bytes.Length))],
            1 => Flipped(bytes, random),
            2 => Without(bytes, random),
            3 => Twice(bytes, random),
            4 when Sheet(bytes, random) is { } workbook => workbook,
            _ => Trapped(bytes, random),
        };
    }

    private static byte[] Flipped(byte[] bytes, Random random)
    {
        bytes = [.. bytes];
        for (var n = random.Next(1, 9); n > 0; n--) bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
        return bytes;
    }

    private static byte[] Without(byte[] bytes, Random random)
    {
        var (from, to) = Span(bytes, random);
        return [.. bytes[..from], .. bytes[to..]];
    }

    private static byte[] Twice(byte[] bytes, Random random)
    {
        var (from, to) = Span(bytes, random);
        return [.. bytes[..to], .. bytes[from..]];
    }

    private static byte[] Trapped(byte[] bytes, Random random)
    {
        var at = random.Next(bytes.Length);
        return [.. bytes[..at], .. Encoding.UTF8.GetBytes(Traps[random.Next(Traps.Length)]), .. bytes[at..]];
    }

    /// <summary>Damages one part inside a workbook, so that the archive itself stays sound.</summary>
    private static byte[]? Sheet(byte[] bytes, Random random)
    {
        if (bytes is not [(byte)'P', (byte)'K', ..]) return null;
        try
        {
            using var archive = new ZipArchive(new MemoryStream(bytes), ZipArchiveMode.Read);
            var parts = archive.Entries.Select(e => (e.FullName, Content(e))).ToList();
            var place = random.Next(parts.Count);
            parts[place] = (parts[place].FullName, random.Next(3) == 0 ? Without(parts[place].Item2, random) : Trapped(parts[place].Item2, random));
            return SampleFiles.Pack(parts);
        }
        catch (Exception fault) when (fault is InvalidDataException or IOException or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    private static byte[] Content(ZipArchiveEntry entry)
    {
        using var content = new MemoryStream();
        using var packed = entry.Open();
        packed.CopyTo(content);
        return content.Length > 0 ? content.ToArray() : [0];
    }

    private static (int From, int To) Span(byte[] bytes, Random random)
    {
        var from = random.Next(bytes.Length);
        return (from, Math.Min(bytes.Length, from + random.Next(1, 60)));
    }
}

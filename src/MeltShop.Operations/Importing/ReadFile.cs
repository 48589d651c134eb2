using System.Security.Cryptography;
using MeltShop.Metallurgy;
using MeltShop.Operations.Importing.Files;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Importing.Rows;

namespace MeltShop.Operations.Importing;

/// <summary>What a file says, before anybody looks into the records.</summary>
/// <param name="Sha256">Of its bytes, 64 lower-case hexadecimal digits.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="Rows">Rows after the headings.</param>
/// <param name="Samples">Those whose rows are all sound.</param>
/// <param name="Faults">Why the other rows do not count, in the order of the file.</param>
/// <param name="Refusal">Why the file cannot be read at all; then it holds nothing.</param>
public sealed record ReadFile(
    string Sha256, long Bytes, int Rows, IReadOnlyList<ImportSample> Samples, IReadOnlyList<RowFault> Faults, Finding? Refusal = null)
{
    /// <summary>Reasons that are kept of one row: the first ones say enough.</summary>
    private const int MostReasons = 3;

    /// <summary>Reads a file by a map. Whatever the bytes are, the answer is what can be read, or why nothing can.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="map">Without findings of <see cref="ColumnMapCheck"/>.</param>
    /// <param name="zone">The site's.</param>
    /// <param name="latest">No coin can have been taken after it.</param>
    /// <param name="cancellation">Gives up between two rows.</param>
    public static ReadFile Of(byte[] bytes, ColumnMap map, TimeZoneInfo zone, DateTimeOffset latest, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(map);
        var sha256 = Convert.ToHexStringLower(SHA256.HashData(bytes));
        try
        {
            var (rows, faults) = (0, new List<RowFault>());
            var samples = Read(bytes, map, new RowReader(map, zone, latest), faults, ref rows, cancellation);
            return new(sha256, bytes.Length, rows, samples, [.. faults.OrderBy(f => f.Line)]);
        }
        catch (SheetFault fault)
        {
            return new(sha256, bytes.Length, 0, [], [], fault.Finding);
        }
    }

    private static List<ImportSample> Read(
        byte[] bytes, ColumnMap map, RowReader reader, List<RowFault> faults, ref int count, CancellationToken cancellation)
    {
        var sound = new List<ImportRow>();
        var faulty = new HashSet<object>();
        var isHeaded = map.HeadingLine == 0;
        foreach (var row in Sheet.Rows(bytes, map.Separator, map.Coding))
        {
            cancellation.ThrowIfCancellationRequested();
            if (row.Line == map.HeadingLine) isHeaded = CheckHeadings(row, map);
            if (row.Line <= map.HeadingLine) continue;
            if (!isHeaded) break;
            count++;
            var before = faults.Count;
            var read = reader.Read(row, faults);
            if (faults.Count == before) sound.Add(read!);
            else if (read is not null) faulty.Add(SampleGrouping.Key(read));
            if (faults.Count > before + MostReasons) faults.RemoveRange(before + MostReasons, faults.Count - before - MostReasons);
        }

        if (!isHeaded) throw SheetFault.Of("importFile.noHeadings", map.HeadingLine);
        if (count == 0) throw SheetFault.Of("importFile.empty");
        return SampleGrouping.Group(map, sound, faulty, faults);
    }

    private static bool CheckHeadings(SheetRow row, ColumnMap map)
    {
        foreach (var column in map.Columns)
        {
            var stands = column.Place < row.Cells.Count ? row.Cells[column.Place].Text.Trim() : "";
            if (stands != column.Heading.Trim()) throw SheetFault.Of("importFile.heading", column.Place + 1, stands, column.Heading);
        }

        return true;
    }
}

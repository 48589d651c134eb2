using MeltShop.Metallurgy;
using MeltShop.Operations.Importing.Files;
using MeltShop.Operations.Importing.Maps;

namespace MeltShop.Operations.Importing;

/// <summary>The first rows of a sample file, for somebody who makes a map of it.</summary>
/// <param name="Rows">As they stand there.</param>
/// <param name="Refusal">Why it cannot be read.</param>
public sealed record FileLook(IReadOnlyList<SheetRow> Rows, Finding? Refusal = null)
{
    private const int Most = 30;

    private static readonly char[] Separators = [';', '\t', ',', '|'];

    public static FileLook Of(byte[] bytes, char separator, TextCoding coding)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        try
        {
            return new([.. Sheet.Rows(bytes, separator, coding).Take(Most)]);
        }
        catch (SheetFault fault)
        {
            return new([], fault.Finding);
        }
    }

    /// <summary>The sign that parts most cells of the first line: offered, and for the person to change.</summary>
    public static char LikelySeparator(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var line = bytes.AsSpan(0, Math.Min(bytes.Length, 4000));
        var end = line.IndexOf((byte)'\n');
        var first = (end < 0 ? line : line[..end]).ToArray();
        return Separators.MaxBy(sign => first.Count(b => b == sign));
    }
}

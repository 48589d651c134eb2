using System.Globalization;
using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore.Metadata;

namespace MeltShop.Records.Exchange;

/// <summary>
/// A stored value in a form that is the same on both databases: <c>long</c>, <c>double</c>, <c>string</c>, <c>bool</c>, <c>DateTime</c> in UTC,
/// <c>Guid</c>, <c>byte[]</c>, null, or <see cref="Unreadable"/> for what a column of its kind never holds.
/// </summary>
internal static class StoredValue
{
    /// <summary>Something that this program has not written: SQLite keeps any type in any column.</summary>
    public sealed record Unreadable(object Stored);

    /// <summary>From what SQLite returns: only the one form that this program writes counts.</summary>
    public static object? OfSqlite(ValueKind kind, object? stored) => (kind, stored) switch
    {
        (_, null or DBNull) => null,
        (ValueKind.Text, string) or (ValueKind.Integer, long) or (ValueKind.Number, double) or (ValueKind.Bytes, byte[]) => stored,
        (ValueKind.YesNo, 0L) => false,
        (ValueKind.YesNo, 1L) => true,
        (ValueKind.Instant, long ticks) when ticks >= 0 && ticks <= DateTime.MaxValue.Ticks => new DateTime(ticks, DateTimeKind.Utc),
        (ValueKind.Identifier, string text) when Guid.TryParseExact(text, "D", out var guid) && text == InSqlite(guid) => guid,
        _ => new Unreadable(stored),
    };

    /// <summary>From what PostgreSQL returns; its columns hold nothing but their type.</summary>
    public static object? OfPostgres(object? stored) => stored switch
    {
        null or DBNull => null,
        int number => (long)number,
        _ => stored,
    };

    /// <summary>From the value of an entity, as it will be stored.</summary>
    public static object? OfProperty(IReadOnlyProperty property, object? value)
    {
        if (value is null) return null;
        var kind = StoredTables.KindOf(property);
        if (kind == ValueKind.Instant) return ((DateTimeOffset)value).Cut().UtcDateTime;
        if (kind == ValueKind.Identifier) return value;
        var stored = property.GetTypeMapping().Converter?.ConvertToProvider(value) ?? value;
        return kind == ValueKind.Integer ? Convert.ToInt64(stored, CultureInfo.InvariantCulture) : stored;
    }

    /// <summary>To what SQLite's parameters take.</summary>
    public static object ForSqlite(object? value) => value switch
    {
        null => DBNull.Value,
        DateTime instant => instant.Ticks,
        Guid guid => InSqlite(guid),
        bool yes => yes ? 1L : 0L,
        _ => value,
    };

    /// <summary>One text for each value, the same on both databases: what the trail keeps and what is compared.</summary>
    public static string? Text(object? value) => value switch
    {
        null => null,
        DateTime instant => instant.ToString("O", CultureInfo.InvariantCulture),
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        byte[] bytes => Convert.ToBase64String(bytes),
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString(),
    };

    /// <summary>No number and no instant has a longer text.</summary>
    public const int MostBytes = 40;

    /// <summary>The text of a number or an instant in UTF-8.</summary>
    /// <returns>False for every other value.</returns>
    public static bool TryText(object? value, Span<byte> utf8, out int count)
    {
        count = 0;
        return value switch
        {
            double number => number.TryFormat(utf8, out count, "R", CultureInfo.InvariantCulture),
            long number => number.TryFormat(utf8, out count, default, CultureInfo.InvariantCulture),
            DateTime instant => instant.TryFormat(utf8, out count, "O", CultureInfo.InvariantCulture),
            _ => false,
        };
    }

    /// <summary>An instant from its text.</summary>
    /// <exception cref="FormatException">It is none, or not in UTC.</exception>
    public static DateTime Instant(string text) =>
        DateTime.ParseExact(text, "O", CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind) is { Kind: DateTimeKind.Utc } instant
            ? instant
            : throw new FormatException($"'{text}' is not in UTC.");

    private static string InSqlite(Guid guid) => guid.ToString("D").ToUpperInvariant();
}

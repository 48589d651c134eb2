using System.Globalization;

namespace MeltShop.Records.Reading;

/// <summary>
/// Names in the order in which people count them: bin 2 before bin 10, whatever their case. A database sorts letter by letter, and each in
/// a way of its own: what it answers is put into this order afterwards.
/// </summary>
public static class NaturalOrder
{
    public static StringComparer Names { get; } = StringComparer.Create(CultureInfo.InvariantCulture, CompareOptions.IgnoreCase | CompareOptions.NumericOrdering);

    /// <summary>The rows by what they are called; those of the same name stay as they stood.</summary>
    public static IReadOnlyList<T> InNaturalOrder<T>(this IEnumerable<T> rows, Func<T, string> name) => [.. rows.OrderBy(name, Names)];
}

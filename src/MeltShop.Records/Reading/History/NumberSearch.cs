using MeltShop.Records.Heats;
using Microsoft.EntityFrameworkCore;

using static System.FormattableString;

namespace MeltShop.Records.Reading.History;

/// <summary>
/// Finds heats by what somebody typed of a number. <c>HB-2026-0412</c> is found by each of its beginnings, by <c>2026-04</c> and, in every year,
/// by <c>0412</c>, <c>041</c> and <c>412</c>: the beginnings that are meant are ranges of the index on the numbers.
/// </summary>
internal static class NumberSearch
{
    /// <summary>Greater than every character of a number.</summary>
    private const string Beyond = "\uffff";

    /// <summary>The beginnings of numbers that the words may mean: none of them begins with another, so that no number is found twice.</summary>
    public static async Task<IReadOnlyList<string>> Beginnings(RecordsContext db, string words, CancellationToken ct)
    {
        var sites = await db.Sites.Select(s => s.Code + "-").ToListAsync(ct);
        if (sites.Count > 0 && sites.TrueForAll(site => site.StartsWith(words, StringComparison.OrdinalIgnoreCase))) return [""];
        var isCount = words.All(char.IsAsciiDigit);
        var years = isCount ? await db.HeatCounters.Select(c => c.Year).Distinct().ToListAsync(ct) : [];
        List<string> all = [.. sites.SelectMany(site => OfSite(site, words, years)).Append(words).Distinct()];
        return [.. all.Where(one => !all.Exists(shorter => one.Length > shorter.Length && one.StartsWith(shorter, StringComparison.Ordinal)))];
    }

    private static IEnumerable<string> OfSite(string site, string words, List<int> years)
    {
        if (words.StartsWith(site, StringComparison.OrdinalIgnoreCase)) return [site + words[site.Length..]];
        if (site.StartsWith(words, StringComparison.OrdinalIgnoreCase)) return [site];
        return years.SelectMany(year => new[] { Invariant($"{site}{year:0000}-{words}"), Invariant($"{site}{year:0000}-{words.PadLeft(4, '0')}") }).Append(site + words);
    }

    /// <summary>
    /// The heats whose number begins in one of these ways, the greatest number first, as the index has them: so a page reads no more than a page of each beginning,
    /// also where half of all numbers begin so. Each is a look into the index by itself, because a database would read all rows for one condition of many parts.
    /// </summary>
    /// <param name="below">The number where the page before ended; null for the first page.</param>
    /// <param name="most">Rows of a page, and one more that says whether there is another page.</param>
    public static IQueryable<Heat> Beginning(this IQueryable<Heat> heats, IReadOnlyList<string> beginnings, string? below, int most)
    {
#pragma warning disable CA1309 // the database compares, by the order of its own index
        if (below is not null) heats = heats.Where(h => string.Compare(h.Number, below) < 0);
        return beginnings
            .Select(from => heats.Where(h => string.Compare(h.Number, from) >= 0 && string.Compare(h.Number, from + Beyond) < 0).OrderByDescending(h => h.Number).Take(most))
            .Aggregate((all, more) => all.Concat(more)).OrderByDescending(h => h.Number);
#pragma warning restore CA1309
    }
}

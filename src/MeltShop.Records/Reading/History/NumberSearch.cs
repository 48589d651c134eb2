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

    /// <summary>The beginnings of numbers that the words may mean; empty where every number begins so.</summary>
    public static async Task<IReadOnlyList<string>> Beginnings(RecordsContext db, string words, CancellationToken ct)
    {
        var sites = await db.Sites.Select(s => s.Code + "-").ToListAsync(ct);
        if (sites.Count > 0 && sites.TrueForAll(site => site.StartsWith(words, StringComparison.OrdinalIgnoreCase))) return [];
        var isCount = words.All(char.IsAsciiDigit);
        var years = isCount ? await db.HeatCounters.Select(c => c.Year).Distinct().ToListAsync(ct) : [];
        return [.. sites.SelectMany(site => OfSite(site, words, years)).Append(words).Distinct()];
    }

    private static IEnumerable<string> OfSite(string site, string words, List<int> years)
    {
        if (words.StartsWith(site, StringComparison.OrdinalIgnoreCase)) return [site + words[site.Length..]];
        if (site.StartsWith(words, StringComparison.OrdinalIgnoreCase)) return [site];
        return years.SelectMany(year => new[] { Invariant($"{site}{year:0000}-{words}"), Invariant($"{site}{year:0000}-{words.PadLeft(4, '0')}") }).Append(site + words);
    }

    /// <summary>The heats whose number begins in one of these ways. Each is a look into the index by itself, because a database would read all rows for one condition of many parts.</summary>
    public static IQueryable<Heat> Beginning(this IQueryable<Heat> heats, RecordsContext db, IReadOnlyList<string> beginnings)
    {
        if (beginnings.Count == 0) return heats;
#pragma warning disable CA1309 // the database compares, by the order of its own index
        var ids = beginnings
            .Select(from => db.Heats.Where(h => string.Compare(h.Number, from) >= 0 && string.Compare(h.Number, from + Beyond) < 0).Select(h => h.Id))
            .Aggregate((all, more) => all.Concat(more));
#pragma warning restore CA1309
        return heats.Where(h => ids.Contains(h.Id));
    }
}

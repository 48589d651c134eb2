using System.Globalization;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Writing;

/// <summary>The counters of heat numbers against the numbers themselves, which the trail holds: none is missing, none was given twice.</summary>
internal static class CounterCheck
{
    public static async Task<IEnumerable<TrailFault>> Run(RecordsContext db, CancellationToken ct)
    {
        var given = (await db.Heats.Select(h => new { h.SiteId, h.Number }).ToListAsync(ct))
            .Select(h => (h.SiteId, Parts: h.Number.Split('-')))
            .Where(h => h.Parts.Length >= 3)
            .GroupBy(h => (h.SiteId, Year: Whole(h.Parts[^2])), h => Whole(h.Parts[^1]))
            .ToDictionary(g => g.Key, g => (Count: g.Distinct().Count(), Last: g.Max()));
        var counters = (await db.HeatCounters.AsNoTracking().ToListAsync(ct)).ToDictionary(c => (c.SiteId, c.Year), c => c.Last);
        return given.Keys.Union(counters.Keys)
            .Where(k => !given.TryGetValue(k, out var numbers) || !counters.TryGetValue(k, out var last) || numbers != (last, last))
            .Select(k => new TrailFault("row.changed", Table: nameof(RecordsContext.HeatCounters), Key: $"{k.SiteId}/{k.Year}", Column: "Last"));
    }

    private static int Whole(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1;
}

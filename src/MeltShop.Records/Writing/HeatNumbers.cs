using System.Globalization;
using MeltShop.Records.Sites;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Writing;

/// <summary>Gives heat numbers: site, year of the site's own calendar, and a count without gap or double.</summary>
public static class HeatNumbers
{
    /// <summary>
    /// The next number, for example <c>HB-2026-0017</c>. Counted up in the caller's transaction: who comes at the same time waits,
    /// and a transaction that is rolled back leaves no gap.
    /// </summary>
    public static async Task<string> Next(RecordsContext db, Site site, DateTimeOffset instant, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(db);
        ArgumentNullException.ThrowIfNull(site);
        if (db.Database.CurrentTransaction is null)
            throw new InvalidOperationException("A heat number is given in the transaction that starts the heat.");
        var year = TimeZoneInfo.ConvertTime(instant, TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone)).Year;
        var last = await db.Database.SqlQuery<int>(
            $"""
            INSERT INTO "HeatCounters" ("SiteId", "Year", "Last") VALUES ({site.Id}, {year}, 1)
            ON CONFLICT ("SiteId", "Year") DO UPDATE SET "Last" = "HeatCounters"."Last" + 1
            RETURNING "Last" AS "Value"
            """).ToListAsync(ct);
        return string.Create(CultureInfo.InvariantCulture, $"{site.Code}-{year:0000}-{last.Single():0000}");
    }
}

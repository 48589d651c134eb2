using MeltShop.Records.Sites;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Sites;

/// <summary>What every page needs of the site.</summary>
public sealed class SitePage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>The one site; null before it is set up.</summary>
    public async Task<SiteView?> Load(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await Load(db, ct);
    }

    internal static Task<SiteView?> Load(RecordsContext db, CancellationToken ct) => db.Sites.AsNoTracking()
        .Select(site => new SiteView(
            site.Code, site.Name, site.Currency, site.TimeZone, site.MassUnit ?? MassUnit.Kilogram, site.TemperatureUnit ?? TemperatureUnit.Celsius))
        .FirstOrDefaultAsync(ct);
}

/// <param name="Code">First part of the heat numbers.</param>
/// <param name="Name">As it stands on certificates.</param>
/// <param name="Currency">ISO 4217 code.</param>
/// <param name="TimeZone">IANA zone.</param>
public sealed record SiteView(string Code, string Name, string Currency, string TimeZone, MassUnit MassUnit, TemperatureUnit TemperatureUnit);

using System.Globalization;
using MeltShop.Records.Reading.Sites;

namespace MeltShop.Web.Components.Reading;

/// <summary>What the pages need of the site: its units and currency, and its zone, in which they show instants, in the person's language.</summary>
public sealed class ShopSite(SitePage page)
{
    private TimeZoneInfo? zone;

    /// <summary>ISO 4217 code of the shop's one currency; empty before the site is set up.</summary>
    public string Currency { get; private set; } = "";

    /// <summary>The shop's units of mass and temperature.</summary>
    public ShopUnits Units { get; private set; } = ShopUnits.Recorded;

    /// <summary>The name of its zone, as browsers know it too; null before the site is set up.</summary>
    public string? Zone { get; private set; }

    /// <summary>It was looked for, and nobody has set it up yet.</summary>
    public bool IsMissing { get; private set; }

    /// <summary>Reads the site, once it is set up.</summary>
    public Task Load(CancellationToken ct) => zone is null ? LoadAgain(ct) : Task.CompletedTask;

    /// <summary>Reads it anew, after somebody changed it; until it is read the old one stands.</summary>
    public async Task LoadAgain(CancellationToken ct)
    {
        var read = await page.Load(ct);
        IsMissing = read is null;
        if (read is not { } site) return;
        (Currency, Zone, zone) = (site.Currency, site.TimeZone, TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone));
        Units = ShopUnits.Of(site.MassUnit, site.TemperatureUnit);
    }

    /// <summary>Hours, minutes and seconds: for what changes while one looks at it.</summary>
    public string Clock(DateTimeOffset instant) => Local(instant).ToString("HH:mm:ss", CultureInfo.CurrentCulture);

    /// <summary>Hours and minutes.</summary>
    public string Time(DateTimeOffset instant) => Local(instant).ToString("HH:mm", CultureInfo.CurrentCulture);

    /// <summary>Day and time: for what stands in the records.</summary>
    public string DayAndTime(DateTimeOffset instant) => Local(instant).ToString("d MMM yyyy HH:mm", CultureInfo.CurrentCulture);

    /// <summary>To the second with its day: a page that was left open says tomorrow how old it is.</summary>
    public string DayAndClock(DateTimeOffset instant) => Local(instant).ToString("d MMM yyyy HH:mm:ss", CultureInfo.CurrentCulture);

    /// <summary>The day.</summary>
    public string Day(DateTimeOffset instant) => Local(instant).ToString("d MMM yyyy", CultureInfo.CurrentCulture);

    /// <summary>A day of the site's calendar.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.CurrentCulture);

    /// <summary>The calendar day of an instant here.</summary>
    public DateOnly DayOf(DateTimeOffset instant) => DateOnly.FromDateTime(Local(instant).DateTime);

    /// <summary>The instant at which a day of the site's calendar begins.</summary>
    public DateTimeOffset Start(DateOnly day)
    {
        var midnight = day.ToDateTime(TimeOnly.MinValue);
        return new DateTimeOffset(midnight, (zone ?? TimeZoneInfo.Utc).GetUtcOffset(midnight)).ToUniversalTime();
    }

    private DateTimeOffset Local(DateTimeOffset instant) => TimeZoneInfo.ConvertTime(instant, zone ?? TimeZoneInfo.Utc);
}

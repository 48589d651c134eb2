using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Shop;

/// <summary>The time zones that this computer knows, by their IANA names: they are the same in every language.</summary>
internal static class Zones
{
    public static IReadOnlyList<Choice> All { get; } =
    [
        .. TimeZoneInfo.GetSystemTimeZones()
            .Select(zone => zone.HasIanaId ? zone.Id : TimeZoneInfo.TryConvertWindowsIdToIanaId(zone.Id, out var iana) ? iana : null).OfType<string>()
            .Distinct().Order(StringComparer.Ordinal).Select(id => new Choice(id, id.Replace('_', ' '))),
    ];

    /// <summary>The same with one that stands already, whatever this computer knows.</summary>
    public static IReadOnlyList<Choice> With(string standing) => All.Any(zone => zone.Value == standing) ? All : [.. All, new(standing, standing)];
}

namespace MeltShop.Records.Sites;

/// <summary>The one site of an installation; every heat carries it.</summary>
public sealed class Site
{
    /// <summary>Its key: two who set an installation up at once cannot both.</summary>
    public const long OnlyId = 1;

    public long Id { get; init; }

    /// <summary>First part of the heat number, for example <c>HB</c>.</summary>
    public required string Code { get; init; }

    public required string Name { get; set; }

    /// <summary>IANA zone that decides day, shift and year, for example <c>Europe/Berlin</c>.</summary>
    public required string TimeZone { get; set; }

    /// <summary>ISO 4217 code of the shop's one currency.</summary>
    public required string Currency { get; set; }

    /// <summary>What pages and printed sheets show and read; null: nobody chose, so kg.</summary>
    public MassUnit? MassUnit { get; set; }

    /// <summary>What pages and printed sheets show and read; null: nobody chose, so °C.</summary>
    public TemperatureUnit? TemperatureUnit { get; set; }
}

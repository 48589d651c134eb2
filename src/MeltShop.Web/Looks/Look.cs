namespace MeltShop.Web.Looks;

/// <summary>
/// How the pages look on this device: light, dark or in high contrast. It is kept in a cookie, so that the first byte of every page
/// has it and nothing flashes; without one the device's own setting counts.
/// </summary>
internal static class Look
{
    public const string Cookie = "meltshop-look";
    public const string Page = "/look";
    public const string Choose = "/look/choose";
    public const string Device = "device";
    public const string Contrast = "contrast";

    public static IReadOnlyList<string> Choices { get; } = [Device, "light", "dark", Contrast];

    /// <summary>What was chosen on the device that asks; null where its own setting counts.</summary>
    public static string? Of(HttpContext? request) =>
        request?.Request.Cookies[Cookie] is { } look && look != Device && Choices.Contains(look) ? look : null;

    /// <summary>When the sheet for high contrast counts, as a media query.</summary>
    public static string ContrastWhen(string? look) => look switch
    {
        null => "(prefers-contrast: more)",
        Contrast => "all",
        _ => "not all",
    };
}

namespace MeltShop.Web.Composition;

/// <summary>Where a start listens that was not told: on this machine only, so that no secret and no certificate is needed to begin.</summary>
internal static class LoopbackAddress
{
    private const string Address = "http://127.0.0.1:5080";

    // The framework's own settings for addresses, each of which wins over this one.
    private static readonly string[] Told = ["urls", "http_ports", "https_ports", "Kestrel:Endpoints"];

    public static void UseLoopbackUnlessTold(this WebApplicationBuilder builder)
    {
        if (!Told.Any(key => builder.Configuration.GetSection(key).Exists())) builder.WebHost.UseUrls(Address);
    }
}

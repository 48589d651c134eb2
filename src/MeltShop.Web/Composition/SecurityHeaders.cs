namespace MeltShop.Web.Composition;

/// <summary>What the browser may do with our pages: run our scripts, frame nothing, be framed by nobody, send no address elsewhere.</summary>
internal static class SecurityHeaders
{
    /// <summary>
    /// Styles need 'unsafe-inline': the component library places its menus with style attributes. Scripts do not, and that is
    /// where the danger is. Images may be data: the library draws some marks so.
    /// </summary>
    private const string ContentSecurityPolicy =
        "default-src 'self'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self'; connect-src 'self'; "
        + "object-src 'none'; base-uri 'self'; form-action 'self'; frame-src 'none'; frame-ancestors 'none'";

    public static void UseSecurityHeaders(this IApplicationBuilder app) => app.Use((http, next) =>
    {
        var headers = http.Response.Headers;
        headers.ContentSecurityPolicy = ContentSecurityPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), payment=(), usb=()";
        return next(http);
    });
}

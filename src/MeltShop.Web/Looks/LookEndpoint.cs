using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace MeltShop.Web.Looks;

/// <summary>Keeps the look of a device: a full post, for only that can set a cookie.</summary>
internal static class LookEndpoint
{
    private static readonly TimeSpan Kept = TimeSpan.FromDays(400);

    public static void MapLook(this IEndpointRouteBuilder routes) => routes.MapPost(Look.Choose, Keep).AllowAnonymous();

    private static RedirectHttpResult Keep(HttpContext http, [FromForm] string? look, [FromForm] string? returnTo)
    {
        var cookie = new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Lax, Secure = http.Request.IsHttps, IsEssential = true, MaxAge = Kept };
        if (look is not null && look != Look.Device && Look.Choices.Contains(look)) http.Response.Cookies.Append(Look.Cookie, look, cookie);
        else http.Response.Cookies.Delete(Look.Cookie);
        return TypedResults.LocalRedirect(SignInPaths.Local(returnTo));
    }
}

using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;

namespace MeltShop.Web.SignIn;

/// <summary>Changing the person at a shared station: full posts, for only they can set a cookie.</summary>
internal static class StationEndpoints
{
    public static void MapStation(this IEndpointRouteBuilder routes)
    {
        routes.MapPost(SignInPaths.TakeOver, TakeOverAsync).RequireAuthorization().RequireRateLimiting(SignInRateLimit.Policy);
        routes.MapPost(SignInPaths.StepDown, StepDownAsync).RequireAuthorization();
    }

    private static async Task<RedirectHttpResult> TakeOverAsync(
        HttpContext http, ShopSignIn signIn, PinAttempts attempts, ILookupNormalizer names, [FromForm] string? name, [FromForm] string? pin, [FromForm] string? returnTo)
    {
        var whose = names.NormalizeName(name) ?? ""; // as people are looked up: another spelling of the same person is no other one
        var problem = !http.User.IsShared() ? "personal"
            : !attempts.May(whose) ? "often"
            : await signIn.TakeOverAsync(http.User, name ?? "", pin ?? "") ? null : "wrong";
        if (problem is null) attempts.GiveBack(whose);
        return TypedResults.LocalRedirect(problem is null ? SignInPaths.Local(returnTo) : SignInPaths.Station + QueryString.Create(new Dictionary<string, string?>
        {
            ["problem"] = problem,
            ["name"] = name,
            [SignInPaths.ReturnTo] = SignInPaths.Local(returnTo),
        }));
    }

    private static async Task<RedirectHttpResult> StepDownAsync(HttpContext http, ShopSignIn signIn, [FromForm] string? returnTo)
    {
        if (http.User.IsShared()) await signIn.StepDownAsync(http.User);
        return TypedResults.LocalRedirect(SignInPaths.Local(returnTo));
    }
}

using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace MeltShop.Web.SignIn;

/// <summary>Signing in and out: full posts of plain forms, for only they can set a cookie.</summary>
internal static class SignInEndpoints
{
    /// <summary>Hands the person of a request to <see cref="ActingPerson"/>.</summary>
    public static void UseActingPerson(this IApplicationBuilder app) => app.Use((http, next) =>
    {
        if (http.RequestServices.GetService<AuthenticationStateProvider>() is IHostEnvironmentAuthenticationStateProvider state)
            state.SetAuthenticationState(Task.FromResult(new AuthenticationState(http.User)));
        return next(http);
    });

    public static void MapSignIn(this IEndpointRouteBuilder routes)
    {
        routes.MapPost(SignInPaths.Enter, EnterAsync).AllowAnonymous().RequireRateLimiting(SignInRateLimit.Policy);
        routes.MapPost(SignInPaths.AddFirstAdministrator, FirstAdministratorEndpoint.AddAsync).AllowAnonymous().RequireRateLimiting(SignInRateLimit.Policy);
        routes.MapPost(SignInPaths.Leave, LeaveAsync).RequireAuthorization();
        routes.MapStation();
        routes.MapOwn();
    }

    private static async Task<RedirectHttpResult> EnterAsync(
        ShopSignIn signIn, [FromForm] string? name, [FromForm] string? password, [FromForm] string? station, [FromForm] string? shared, [FromForm] string? returnTo)
    {
        var userName = name?.Trim() ?? "";
        var result = await signIn.EnterAsync(userName, password ?? "", station?.Trim() ?? "", shared is not null);
        if (result.Succeeded && await signIn.HasStartPasswordAsync(userName)) return TypedResults.LocalRedirect(SignInPaths.Own + "?problem=startPassword");
        if (result.Succeeded) return TypedResults.LocalRedirect(SignInPaths.Local(returnTo));
        // What was typed stays, but for the password.
        return TypedResults.LocalRedirect(SignInPaths.Page + QueryString.Create(new Dictionary<string, string?>
        {
            ["problem"] = result.IsLockedOut ? "locked" : "wrong",
            ["name"] = name,
            ["station"] = station,
            [SignInPaths.ReturnTo] = SignInPaths.Local(returnTo),
        }));
    }

    /// <param name="signIn">Identity's sign-in.</param>
    /// <param name="form">Empty but for the antiforgery token: asking for it has the token checked.</param>
    private static async Task<RedirectHttpResult> LeaveAsync(ShopSignIn signIn, IFormCollection form)
    {
        await signIn.SignOutAsync();
        return TypedResults.LocalRedirect(SignInPaths.Page);
    }
}

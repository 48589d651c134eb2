using Microsoft.AspNetCore.Antiforgery;

namespace MeltShop.Web.SignIn;

/// <summary>
/// A sign-in form that was open while its token went out of date (another sign-in beside it, a new data folder) is refused. Whoever
/// sent it comes back to a fresh one and is told so, rather than to an empty page.
/// </summary>
internal static class OldForms
{
    /// <summary>Call it after antiforgery, whose verdict it reads.</summary>
    public static void UseFormsThatGrewOld(this IApplicationBuilder app) => app.Use((http, next) =>
    {
        if (http.Features.Get<IAntiforgeryValidationFeature>() is not { IsValid: false } || PageOf(http.Request.Path) is not { } page) return next(http);
        http.Response.Redirect($"{page}?problem=old");
        return Task.CompletedTask;
    });

    private static string? PageOf(PathString path) => path.Value switch
    {
        SignInPaths.Enter or SignInPaths.Leave => SignInPaths.Page,
        SignInPaths.TakeOver or SignInPaths.StepDown => SignInPaths.Station,
        SignInPaths.OwnCulture or SignInPaths.OwnPin or SignInPaths.OwnPassword => SignInPaths.Own,
        SignInPaths.AddFirstAdministrator => SignInPaths.FirstAdministrator,
        _ => null,
    };
}

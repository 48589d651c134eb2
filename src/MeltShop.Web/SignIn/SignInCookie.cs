using System.Security.Claims;
using MeltShop.Web.Api.Answering;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Identity;

namespace MeltShop.Web.SignIn;

/// <summary>The cookie of a signed-in person.</summary>
internal static class SignInCookie
{
    private static readonly PathString Api = "/api";

    public static void Configure(CookieAuthenticationOptions options)
    {
        options.Cookie.Name = "meltshop-person";
        options.Cookie.HttpOnly = true;
        options.Cookie.SameSite = SameSiteMode.Lax;
        // A first start is plain http on this machine; behind a proxy with TLS the cookie is secure by itself.
        options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        options.LoginPath = SignInPaths.Page;
        options.LogoutPath = SignInPaths.Leave;
        options.AccessDeniedPath = SignInPaths.Page;
        options.ReturnUrlParameter = SignInPaths.ReturnTo;
        // One shift and its hand-over.
        options.ExpireTimeSpan = TimeSpan.FromHours(12);
        options.SlidingExpiration = true;
        options.Events.OnValidatePrincipal = ValidateAsync;
        options.Events.OnRedirectToLogin = async context => await Redirect(context, StatusCodes.Status401Unauthorized, "You are not signed in.", await ToSignInAsync(context));
        options.Events.OnRedirectToAccessDenied = context => Redirect(context, StatusCodes.Status403Forbidden, "You may not do that.", context.RedirectUri + "&problem=right");
    }

    /// <summary>
    /// When the sign-in of this request ends; null where it says nothing of it. That of a shared station is fixed; on a device of one's own each
    /// request gives it a new term, to within the minute for which the check of the security stamp is good.
    /// </summary>
    public static DateTimeOffset? EndOf(HttpContext http, TimeProvider clock) =>
        http.Features.Get<IAuthenticateResultFeature>()?.AuthenticateResult?.Properties is { IssuedUtc: { } issued, ExpiresUtc: { } end }
            ? http.User.IsShared() ? end : clock.GetUtcNow() + (end - issued)
            : null;

    /// <summary>A new cookie after a check of the security stamp keeps the station, which no database knows.</summary>
    public static Task KeepStationAsync(SecurityStampRefreshingPrincipalContext context)
    {
        if (context.CurrentPrincipal is { } station) context.NewPrincipal?.MoveTo(station);
        return Task.CompletedTask;
    }

    /// <summary>
    /// The check of the security stamp makes a new cookie every minute, and the framework gives that a whole new term, whatever was said of
    /// refreshing at the sign-in. A shared station keeps its end: the term that is left runs from now.
    /// </summary>
    private static async Task ValidateAsync(CookieValidatePrincipalContext context)
    {
        await SecurityStampValidator.ValidatePrincipalAsync(context);
        if (context is { ShouldRenew: true, Properties.AllowRefresh: false }) context.Properties.IssuedUtc = context.Options.TimeProvider!.GetUtcNow();
    }

    /// <summary>A form that was sent after its sign-in had ended goes on to the page that it names, for nobody can open its own address.</summary>
    private static async Task<string> ToSignInAsync(RedirectContext<CookieAuthenticationOptions> context)
    {
        if (HttpMethods.IsGet(context.Request.Method) || !context.Request.HasFormContentType) return context.RedirectUri;
        var form = await context.Request.ReadFormAsync(context.HttpContext.RequestAborted);
        return SignInPaths.Page + QueryString.Create(SignInPaths.ReturnTo, SignInPaths.Local(form[SignInPaths.ReturnTo]));
    }

    /// <summary>A browser goes to the sign-in page, which says why; a script gets an answer that it can read.</summary>
    private static Task Redirect(RedirectContext<CookieAuthenticationOptions> context, int status, string title, string page)
    {
        if (context.Request.Path.StartsWithSegments(Api))
            return ProblemAnswers.Refuse(status, title, "Sign in, and send the cookie.").ExecuteAsync(context.HttpContext);
        context.Response.Redirect(page);
        return Task.CompletedTask;
    }
}

using MeltShop.Operations.People;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace MeltShop.Web.SignIn;

/// <summary>What people choose for themselves: language and decimal sign, a password and a PIN. Full posts, for the culture is in the cookie.</summary>
internal static class OwnEndpoints
{
    public static void MapOwn(this IEndpointRouteBuilder routes)
    {
        routes.MapPost(SignInPaths.OwnCulture, CultureAsync).RequireAuthorization();
        routes.MapPost(SignInPaths.OwnPassword, PasswordAsync).RequireAuthorization().RequireRateLimiting(SignInRateLimit.Policy);
        routes.MapPost(SignInPaths.OwnPin, PinAsync).RequireAuthorization().RequireRateLimiting(SignInRateLimit.Policy);
    }

    private static async Task<RedirectHttpResult> CultureAsync(
        HttpContext http, ActingPerson person, ChooseCulture choose, ShopSignIn signIn, TimeProvider time, [FromForm] string? culture)
    {
        if (!LanguageServices.Cultures.Contains(culture)) return Back("culture");
        var chosen = await choose.Run(await person.GetAsync(), new(Guid.NewGuid(), time.GetUtcNow(), culture!), http.RequestAborted);
        if (!chosen.Succeeded) return Back(chosen.Findings[0].Code);
        await signIn.RenewAsync(http.User);
        return Back("", "culture");
    }

    private static async Task<RedirectHttpResult> PinAsync(
        HttpContext http, ActingPerson person, SetPin set, TimeProvider time, [FromForm] string? password, [FromForm] string? pin)
    {
        var done = await set.Run(await person.GetAsync(), new(Guid.NewGuid(), time.GetUtcNow()) { Password = password ?? "", Pin = pin ?? "" }, http.RequestAborted);
        return done.Succeeded ? Back("", "pin") : Back(done.Findings[0].Code);
    }

    private static async Task<RedirectHttpResult> PasswordAsync(
        HttpContext http, ActingPerson person, ChangePassword change, ShopSignIn signIn, TimeProvider time, [FromForm] string? password, [FromForm] string? newPassword)
    {
        var done = await change.Run(
            await person.GetAsync(), new(Guid.NewGuid(), time.GetUtcNow()) { Password = password ?? "", NewPassword = newPassword ?? "" }, http.RequestAborted);
        if (!done.Succeeded) return Back("own." + done.Findings[0].Code);
        await signIn.RenewAsync(http.User); // everybody else who is signed in with the old one is out
        return Back("", "password");
    }

    private static RedirectHttpResult Back(string problem, string done = "") =>
        TypedResults.LocalRedirect(SignInPaths.Own + QueryString.Create(new Dictionary<string, string?> { ["problem"] = problem, ["done"] = done }));
}

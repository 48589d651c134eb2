using MeltShop.Web.Api.Answering;
using MeltShop.Web.SignIn;

namespace MeltShop.Web.Composition;

/// <summary>What somebody is told who comes too often or with too many at once: a person on the page, a program in a problem document.</summary>
internal static class TooMany
{
    public static void AddRefusalOfTooMany(this IServiceCollection services) => services.AddRateLimiter(options => options.OnRejected = async (context, _) =>
    {
        var http = context.HttpContext;
        http.Response.Headers.RetryAfter = "1";
        if (http.Request.Path == SignInPaths.Enter || http.Request.Path == SignInPaths.AddFirstAdministrator)
        {
            http.Response.Redirect($"{SignInPaths.Page}?problem=busy");
            return;
        }

        if (http.Request.Path == SignInPaths.TakeOver || http.Request.Path == SignInPaths.OwnPin)
        {
            http.Response.Redirect($"{(http.Request.Path == SignInPaths.TakeOver ? SignInPaths.Station : SignInPaths.Own)}?problem=busy");
            return;
        }

        await ProblemAnswers.TooMany(http).ExecuteAsync(http);
    });
}

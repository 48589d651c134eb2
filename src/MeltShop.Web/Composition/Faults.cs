using MeltShop.Web.Components;
using Microsoft.AspNetCore.Http.HttpResults;

namespace MeltShop.Web.Composition;

/// <summary>What is answered where the program failed: a page to a person, a problem document to a program.</summary>
internal static class Faults
{
    public static void UseFaults(this WebApplication app) => app.UseExceptionHandler(new ExceptionHandlerOptions
    {
        // A request that the server itself could not read is the caller's fault, not ours.
        StatusCodeSelector = fault => fault is BadHttpRequestException refused ? refused.StatusCode : StatusCodes.Status500InternalServerError,
        ExceptionHandler = TellAsync,
        CreateScopeForErrors = true,
    });

    private static async Task TellAsync(HttpContext http)
    {
        if (!http.Request.Path.StartsWithSegments("/api") && http.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase))
            await new RazorComponentResult<FailedDocument> { StatusCode = http.Response.StatusCode }.ExecuteAsync(http);
        else
            await TypedResults.Problem(statusCode: http.Response.StatusCode).ExecuteAsync(http);
    }
}

using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Api.Entries;

/// <summary>
/// The way of everything that is entered on the floor: a small post that a browser keeps until it is answered, so that no entry
/// hangs on a circuit. Only people use it, by their sign-in.
/// </summary>
internal static class EntryEndpoints
{
    public const string Path = "/api/v1/entries";

    public static void MapEntries(this IEndpointRouteBuilder routes)
    {
        var entries = routes.MapGroup(Path).RequireAuthorization().ExcludeFromDescription();
        entries.MapGet("/ticket", Ticket);
        entries.MapPost("", TakeAsync).AddEndpointFilter(RefuseForeign);
    }

    /// <summary>What a browser needs to hand entries in: the token against forged posts, who is signed in, and the time and zone here, and when the sign-in ends.</summary>
    private static async Task<IResult> Ticket(HttpContext http, IAntiforgery antiforgery, ActingPerson person, ShopSite site, TimeProvider clock, CancellationToken cancellation)
    {
        var acting = await person.GetAsync();
        await site.Load(cancellation);
        http.Response.Headers.CacheControl = "no-store";
        return TypedResults.Json(new
        {
            token = antiforgery.GetAndStoreTokens(http).RequestToken,
            personId = http.User.IsNobody() ? 0 : acting.PersonId,
            name = acting.PersonName,
            roles = acting.Roles,
            zone = site.Zone,
            now = clock.GetUtcNow().ToUnixTimeMilliseconds(),
            until = SignInCookie.EndOf(http, clock)?.ToUnixTimeMilliseconds(),
        });
    }

    /// <summary>200 with what was found; nothing found is acceptance. 409 where it is not the entry of who is named here.</summary>
    private static async Task<IResult> TakeAsync(
        HttpContext http, EntryRequest request, EntryDesk desk, ActingPerson person, ShopSite site, IStringLocalizer<Texts.Findings> words, CancellationToken cancellation)
    {
        var acting = await person.GetAsync();
        if (acting.PersonId != request.PersonId || http.User.IsNobody()) return TypedResults.Conflict();
        await site.Load(cancellation); // what is found speaks in the shop's units
        var answer = await desk.Take(acting, request, cancellation);
        return TypedResults.Json(new
        {
            findings = answer.Findings.Select(finding => new { finding.Path, finding.Code, finding.Arguments, words = FindingWords.Of(words, finding, site) }),
        });
    }

    /// <summary>A post without our token comes from a page that is not ours.</summary>
    private static async ValueTask<object?> RefuseForeign(EndpointFilterInvocationContext context, EndpointFilterDelegate next) =>
        await context.HttpContext.RequestServices.GetRequiredService<IAntiforgery>().IsRequestValidAsync(context.HttpContext)
            ? await next(context)
            : TypedResults.StatusCode(StatusCodes.Status419AuthenticationTimeout);
}

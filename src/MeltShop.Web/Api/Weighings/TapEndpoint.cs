using MeltShop.Web.Api.Answering;
using MeltShop.Web.SignIn;

namespace MeltShop.Web.Api.Weighings;

/// <summary>Takes what scales under ladles say was tapped, each once by the sender's own name of it.</summary>
internal static class TapEndpoint
{
    public const string Path = "/api/v1/taps";

    public static void MapTaps(this IEndpointRouteBuilder routes) =>
        routes.MapPost(Path, TakeAsync).RequireAuthorization(ApiKeyAuthentication.Policy).ExcludeFromDescription();

    private static async Task<IResult> TakeAsync(HttpContext http, TapDesk desk, CancellationToken cancellation)
    {
        var sent = await SentBody<TapRequest>.ReadAsync(http, TapRequest.Read);
        if (sent.Request is not { } request) return sent.Refusal!;
        var (tap, found) = await desk.Take(http.User.Identity?.Name ?? "", request, cancellation);
        return tap is null
            ? ProblemAnswers.Refuse(found)
            : TypedResults.Ok(new { tapId = tap.Id, netKg = tap.Kg, mgAfterTreatmentPercent = tap.MgAfterTreatmentPercent, minutesToFloor = tap.MinutesToFloor, observedAt = tap.ObservedAt });
    }
}

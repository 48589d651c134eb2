using MeltShop.Web.Api.Answering;
using MeltShop.Web.Api.Reading;
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
        if (await Calculation.ReadAsync(http.Request, cancellation) is not { } body)
            return ProblemAnswers.Refuse(StatusCodes.Status413PayloadTooLarge, "The body is too large.", $"At most {RequestBody.GreatestBytes} bytes are read.");
        var (request, findings) = RequestBody.Read(body, TapRequest.Read);
        if (request is null) return ProblemAnswers.Refuse(findings);
        var (tap, found) = await desk.Take(http.User.Identity?.Name ?? "", request, cancellation);
        return tap is null
            ? ProblemAnswers.Refuse(found)
            : TypedResults.Ok(new { tapId = tap.Id, netKg = tap.Kg, mgAfterTreatmentPercent = tap.MgAfterTreatmentPercent, minutesToFloor = tap.MinutesToFloor, observedAt = tap.ObservedAt });
    }
}

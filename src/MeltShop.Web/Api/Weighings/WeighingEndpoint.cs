using MeltShop.Web.Api.Answering;
using MeltShop.Web.Api.Reading;
using MeltShop.Web.SignIn;

namespace MeltShop.Web.Api.Weighings;

/// <summary>Takes the weighings of scales, each once by the sender's own name of it.</summary>
internal static class WeighingEndpoint
{
    public const string Path = "/api/v1/weighings";

    public static void MapWeighings(this IEndpointRouteBuilder routes) =>
        routes.MapPost(Path, TakeAsync).RequireAuthorization(ApiKeyAuthentication.Policy).ExcludeFromDescription();

    private static async Task<IResult> TakeAsync(HttpContext http, ScaleDesk desk, CancellationToken cancellation)
    {
        if (await Calculation.ReadAsync(http.Request, cancellation) is not { } body)
            return ProblemAnswers.Refuse(StatusCodes.Status413PayloadTooLarge, "The body is too large.", $"At most {RequestBody.GreatestBytes} bytes are read.");
        var (request, findings) = RequestBody.Read(body, WeighingRequest.Read);
        if (request is null) return ProblemAnswers.Refuse(findings);
        var (weighing, found) = await desk.Take(http.User.Identity?.Name ?? "", request, cancellation);
        return weighing is null
            ? ProblemAnswers.Refuse(found)
            : TypedResults.Ok(new { weighingId = weighing.Id, netKg = weighing.Kg, weighing.IntoBath, weighing.Lot, observedAt = weighing.ObservedAt });
    }
}

using MeltShop.Web.Api.Answering;
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
        var sent = await SentBody<WeighingRequest>.ReadAsync(http, WeighingRequest.Read);
        if (sent.Request is not { } request) return sent.Refusal!;
        var (weighing, found) = await desk.Take(http.User.Identity?.Name ?? "", request, cancellation);
        return weighing is null
            ? ProblemAnswers.Refuse(found)
            : TypedResults.Ok(new { weighingId = weighing.Id, netKg = weighing.Kg, weighing.IntoBath, weighing.Lot, observedAt = weighing.ObservedAt });
    }
}

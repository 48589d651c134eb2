using MeltShop.Web.Api.Answering;
using MeltShop.Web.SignIn;

namespace MeltShop.Web.Api.Samples;

/// <summary>Takes the samples of instruments, each once by the sender's own number of it.</summary>
internal static class SampleEndpoint
{
    public const string Path = "/api/v1/samples";

    public static void MapSamples(this IEndpointRouteBuilder routes) =>
        routes.MapPost(Path, TakeAsync).RequireAuthorization(ApiKeyAuthentication.Policy).ExcludeFromDescription();

    private static async Task<IResult> TakeAsync(HttpContext http, SampleDesk desk, CancellationToken cancellation)
    {
        var sent = await SentBody<SampleRequest>.ReadAsync(http, SampleRequest.Read);
        if (sent.Request is not { } request) return sent.Refusal!;
        var (sampleId, found) = await desk.Take(http.User.Identity?.Name ?? "", request, sent.Bytes, cancellation);
        if (sampleId is not { } id) return ProblemAnswers.Refuse(found);
        return request.Reference is null
            ? TypedResults.Ok(new { id = request.Id, sampleId = id, burns = request.Burns.Count, figures = request.Figures.Count })
            : TypedResults.Ok(new { id = request.Id, controlSampleId = id, burns = request.Burns.Count });
    }
}

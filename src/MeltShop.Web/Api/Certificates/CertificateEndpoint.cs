using MeltShop.Operations.Castings;

namespace MeltShop.Web.Api.Certificates;

/// <summary><c>GET /certificates/{id}</c>: the bytes of a certificate as they were issued, for everybody who is signed in.</summary>
internal static class CertificateEndpoint
{
    public static void MapCertificates(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/certificates/{id:long}", AnswerAsync).RequireAuthorization().ExcludeFromDescription();

    private static async Task<IResult> AnswerAsync(long id, CastingsBoard board, CancellationToken cancellation) =>
        await board.Document(id, cancellation) is { } certificate
            ? TypedResults.File(certificate.Document, "application/pdf", $"{certificate.Number.Replace('/', '-')}-{certificate.Revision}.pdf")
            : TypedResults.NotFound();
}

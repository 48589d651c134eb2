using System.Diagnostics.CodeAnalysis;

namespace MeltShop.Web.Api.Description;

/// <summary>
/// What an endpoint reads, for the OpenAPI document. The endpoints read their bodies themselves; the framework's own
/// description of a body would also make it refuse other content types.
/// </summary>
/// <param name="Type">The shape.</param>
/// <param name="Example">A request that can be sent as it is.</param>
internal sealed record RequestShape(Type Type, string Example);

internal static class RequestShapes
{
    /// <summary>Adds the shape, an example and the refusals that every calculation may answer with.</summary>
    public static RouteHandlerBuilder Describe<TRequest>(
        this RouteHandlerBuilder endpoint, string summary, [StringSyntax(StringSyntaxAttribute.Json)] string example) => endpoint
        .WithSummary(summary)
        .WithMetadata(new RequestShape(typeof(TRequest), example))
        .ProducesValidationProblem()
        .ProducesProblem(StatusCodes.Status401Unauthorized)
        .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
        .ProducesProblem(StatusCodes.Status429TooManyRequests)
        .ProducesProblem(StatusCodes.Status504GatewayTimeout);
}

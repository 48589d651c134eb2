using MeltShop.Web.Api.Reading;
using Microsoft.AspNetCore.Http.HttpResults;

namespace MeltShop.Web.Api.Answering;

/// <summary>What the calculation endpoints do alike: take the body, read it, and answer it or say everything that is wrong with it.</summary>
internal static class Calculation
{
    /// <summary>Answers a request.</summary>
    /// <param name="http">The request; its content type is not looked at, for a script that forgot it sends JSON all the same.</param>
    /// <param name="read">Reads the question and reports findings.</param>
    /// <param name="calculate">Answers a question without findings.</param>
    public static async Task<Results<Ok<TAnswer>, ProblemHttpResult>> AnswerAsync<TRequest, TAnswer>(
        HttpContext http, Func<ObjectReader, TRequest> read, Func<TRequest, CancellationToken, TAnswer> calculate)
        where TRequest : class
    {
        if (await ReadAsync(http.Request, http.RequestAborted) is not { } body)
        {
            return ProblemAnswers.Refuse(
                StatusCodes.Status413PayloadTooLarge, "The body is too large.", $"At most {RequestBody.GreatestBytes} bytes are read.");
        }

        var (request, findings) = RequestBody.Read(body, read);
        return request is null ? ProblemAnswers.Refuse(findings) : TypedResults.Ok(calculate(request, http.RequestAborted));
    }

    /// <summary>The whole body, or null where it is larger than any sensible one.</summary>
    internal static async Task<ReadOnlyMemory<byte>?> ReadAsync(HttpRequest request, CancellationToken cancellation)
    {
        using var body = new MemoryStream();
        var part = new byte[16 * 1024];
        for (int read; (read = await request.Body.ReadAsync(part, cancellation)) > 0;)
        {
            if (body.Length + read > RequestBody.GreatestBytes) return null;
            body.Write(part, 0, read);
        }

        return body.ToArray();
    }
}

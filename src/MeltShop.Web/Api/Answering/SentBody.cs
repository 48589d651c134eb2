using MeltShop.Web.Api.Reading;
using Microsoft.AspNetCore.Http.HttpResults;

namespace MeltShop.Web.Api.Answering;

/// <summary>What a machine sent, read, or the refusal that says everything that is wrong with it.</summary>
/// <param name="Request">Null where it is refused.</param>
/// <param name="Bytes">As they came.</param>
/// <param name="Refusal">Null where there is a request.</param>
internal sealed record SentBody<TRequest>(TRequest? Request, ReadOnlyMemory<byte> Bytes, ProblemHttpResult? Refusal)
    where TRequest : class
{
    /// <summary>Reads a body.</summary>
    /// <param name="http">The request; its content type is not looked at, for a script that forgot it sends JSON all the same.</param>
    /// <param name="read">Reads what was sent and reports findings.</param>
    public static async Task<SentBody<TRequest>> ReadAsync(HttpContext http, Func<ObjectReader, TRequest> read)
    {
        if (await BytesAsync(http.Request, http.RequestAborted) is not { } bytes)
        {
            return new(null, default, ProblemAnswers.Refuse(
                StatusCodes.Status413PayloadTooLarge, "The body is too large.", $"At most {RequestBody.GreatestBytes} bytes are read."));
        }

        var (request, findings) = RequestBody.Read(bytes, read);
        return new(request, bytes, request is null ? ProblemAnswers.Refuse(findings) : null);
    }

    /// <summary>The whole body, or null where it is larger than any sensible one.</summary>
    private static async Task<ReadOnlyMemory<byte>?> BytesAsync(HttpRequest request, CancellationToken cancellation)
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

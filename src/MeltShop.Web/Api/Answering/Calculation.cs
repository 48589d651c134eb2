using MeltShop.Metallurgy;
using MeltShop.Web.Api.Reading;
using Microsoft.AspNetCore.Http.HttpResults;

namespace MeltShop.Web.Api.Answering;

/// <summary>What the calculation endpoints do alike: take the body, read it, and answer it or say everything that is wrong with it.</summary>
internal static class Calculation
{
    /// <summary>Answers a request.</summary>
    /// <param name="http">The request.</param>
    /// <param name="read">Reads the question and reports findings.</param>
    /// <param name="calculate">Answers a question without findings.</param>
    /// <param name="wrong">What only the calculation shows to be wrong with the question; null where there is no such thing.</param>
    public static async Task<Results<Ok<TAnswer>, ProblemHttpResult>> AnswerAsync<TRequest, TAnswer>(
        HttpContext http, Func<ObjectReader, TRequest> read, Func<TRequest, CancellationToken, TAnswer> calculate,
        Func<TRequest, TAnswer, IEnumerable<Finding>>? wrong = null)
        where TRequest : class
    {
        var sent = await SentBody<TRequest>.ReadAsync(http, read);
        if (sent.Request is not { } request) return sent.Refusal!;
        using var seat = await http.RequestServices.GetRequiredService<CalculationBounds>().SeatAsync(request, http.RequestAborted);
        if (seat is { IsAcquired: false }) return ProblemAnswers.TooMany(http);
        var answer = calculate(request, http.RequestAborted);
        return wrong?.Invoke(request, answer).ToList() is { Count: > 0 } findings ? ProblemAnswers.Refuse(findings) : TypedResults.Ok(answer);
    }
}

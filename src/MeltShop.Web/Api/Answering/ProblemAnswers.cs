using MeltShop.Metallurgy;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace MeltShop.Web.Api.Answering;

/// <summary>Refusals as problem documents (RFC 9457).</summary>
internal static class ProblemAnswers
{
    /// <summary>400: every finding under its path.</summary>
    public static ProblemHttpResult Refuse(IEnumerable<Finding> findings)
    {
        var errors = findings
            .GroupBy(finding => finding.Path, StringComparer.Ordinal)
            .ToDictionary(at => at.Key, at => at.Select(Words.For).Distinct().ToArray(), StringComparer.Ordinal);
        return TypedResults.Problem(new HttpValidationProblemDetails(errors)
        {
            Status = StatusCodes.Status400BadRequest,
            Title = "The request cannot be calculated as it is.",
            Detail = "Each entry of errors names a field by its path, and what is wrong with it.",
        });
    }

    /// <summary>429: there is no room to wait either.</summary>
    public static ProblemHttpResult TooMany(HttpContext http)
    {
        http.Response.Headers.RetryAfter = "1";
        return Refuse(StatusCodes.Status429TooManyRequests, "Too many requests at once.", "Wait a moment and send it again.");
    }

    /// <summary>Any other refusal.</summary>
    public static ProblemHttpResult Refuse(int status, string title, string detail) =>
        TypedResults.Problem(new ProblemDetails { Status = status, Title = title, Detail = detail });
}

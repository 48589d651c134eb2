using System.Globalization;
using MeltShop.Records.Reading.Trail;
using MeltShop.Web.Api.Answering;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Http.HttpResults;

namespace MeltShop.Web.Api.Events;

/// <summary>
/// <c>GET /api/v1/events?after=0&amp;limit=100</c>: everything that was recorded, in its order, for other systems. Numbers have no gap and are never
/// given later to an earlier event, so who asks for what comes after the last one that it has misses nothing. Only a key that was made to read the records may ask.
/// </summary>
internal static class EventEndpoint
{
    private const int Usual = 100;
    private const int Most = 500;

    public static void MapEvents(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/api/v1/events", AnswerAsync).RequireAuthorization(ApiKeyAuthentication.ReaderPolicy).ExcludeFromDescription();

    private static async Task<IResult> AnswerAsync(TrailPage page, string? after, string? limit, CancellationToken cancellation)
    {
        if (Whole(after, 0, long.MaxValue) is not { } number) return Refuse("after", "the number of the last event that you have, or 0");
        if (Whole(limit, Usual, Most) is not { } most || most == 0) return Refuse("limit", $"how many events, 1 to {Most}");
        var view = await page.After(number, (int)most, cancellation);
        return TypedResults.Json(new
        {
            events = view.Entries.Select(e => new
            {
                number = e.Number, enteredAt = e.EnteredAt, operation = e.Operation, person = e.Person, station = e.Station, asked = e.Asked, result = e.Result, hash = e.Hash,
            }),
            next = view.Entries.Count > 0 ? view.Entries[^1].Number : number,
            more = view.More,
        });
    }

    /// <summary>Null where it is no whole number from nought to the greatest.</summary>
    private static long? Whole(string? text, long usual, long greatest) =>
        text is null ? usual : long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= greatest ? number : null;

    private static ProblemHttpResult Refuse(string name, string what) =>
        ProblemAnswers.Refuse(StatusCodes.Status400BadRequest, $"{name} cannot be read.", $"{name} is {what}.");
}

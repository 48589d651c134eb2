using System.Text;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Pages.History;
using MeltShop.Web.Pages.Laboratory;

namespace MeltShop.Web.Api.Trends;

/// <summary><c>GET /laboratory/trends.csv</c>: the samples of a trend, always in the unit of the record and UTC, for everybody who is signed in.</summary>
internal static class TrendEndpoint
{
    /// <summary>What lies behind them is the arithmetic of doubles: no instrument reads it.</summary>
    private const int Digits = 10;

    public static void MapTrends(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/laboratory/trends.csv", AnswerAsync).RequireAuthorization().ExcludeFromDescription();

    private static async Task<IResult> AnswerAsync(
        string? quantity, string? step, long? grade, long? furnace, long? instrument, string? after, TrendPage page, CancellationToken cancellation)
    {
        var asked = TrendQuantities.Find(quantity, step == "poured");
        var trend = await page.Load(new(asked, grade, furnace, step == "poured", instrument), HistoryAddress.ReadPlace(after), cancellation);
        var text = new StringBuilder(Csv.Line("heat", "takenAtUtc", "sample", "coin", "instrument", "quantity", "value", "unit", "remarks"));
        foreach (var point in trend.Points) text.Append(Csv.Line(point.HeatNumber, point.At, point.Kind.ToString(), point.Coin, point.Instrument, asked.Name, Math.Round(point.Value, Digits), asked.Unit, point.Remarks));
        return TypedResults.File(Encoding.UTF8.GetBytes(text.ToString()), "text/csv; charset=utf-8", $"trend-{asked.Name}.csv");
    }
}

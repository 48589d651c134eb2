using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Recall;
using MeltShop.Web.Pages.History;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>From what an instrument measured to the castings.</summary>
internal static class RecallAddress
{
    /// <param name="time">All that it ever measured where none is said.</param>
    public static string Of(string code, DoubtedTime? time = null) =>
        $"/recall?from={RecallFrom.Instrument}&of={Uri.EscapeDataString(code)}{Named("since", time?.Since)}{Named("until", time?.Until)}";

    private static string Named(string name, DateTimeOffset? instant) => instant is { } at ? $"&{name}={HistoryAddress.Write(at)}" : "";
}

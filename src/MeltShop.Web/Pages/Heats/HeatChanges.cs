using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Which changes alter what is shown of one heat: on a busy shift most are of other heats and their ladles.</summary>
internal static class HeatChanges
{
    /// <summary>
    /// Itself, its ladles and samples, and all that they are judged by. A new ladle or sample is told with its heat; where lists were cut nobody
    /// knows what is its own.
    /// </summary>
    public static bool Concern(HeatView? shown, long heatId, ChangeNotice change) => change.Kind switch
    {
        ChangeKind.Heat => change.Id == heatId,
        ChangeKind.TreatedLadle when shown is { More: false } => shown.Ladles.Any(ladle => ladle.Id == change.Id),
        ChangeKind.Sample when shown is { More: false } => shown.Samples.Any(sample => sample.Id == change.Id) || shown.Coins.Any(coin => coin.Id == change.Id),
        _ => change.IsOfHeats,
    };
}

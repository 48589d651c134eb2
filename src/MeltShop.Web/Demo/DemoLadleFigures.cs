using MeltShop.Operations.Sites;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Demo;

/// <summary>Says the figures of a demo ladle with their bands, each with where it comes from and how sure it is.</summary>
internal static class DemoLadleFigures
{
    /// <summary>The house's limits of the demo: invented, within what is printed (pouring within 7 to 12 minutes of the inoculation).</summary>
    private const double LeastPouringC = 1330, MostTreatmentC = 1540, InoculationMinutes = 12, RecoveryBand = 3;

    public static async Task Say(DemoHands hands, long ladleId, DemoLadle ladle)
    {
        IReadOnlyList<LadleFigureInput> figures =
        [
            new(LadleFigureKind.Capacity, ladle.CapacityKg, null, null, FigureStanding.Shop, "Invented for the demo"),
            new(LadleFigureKind.FillLimit, ladle.LargestTreatedKg, null, null, FigureStanding.Shop, ladle.Sources.Freeboard.Text),
            new(LadleFigureKind.Pocket, ladle.PocketKg, null, null, FigureStanding.Shop, ladle.Sources.Pocket.Text),
            new(LadleFigureKind.HeatLoss, ladle.HeatLossKelvinPerMinute, null, null, FigureStanding.Assumed, ladle.Sources.HeatLoss.Text),
            new(LadleFigureKind.MgRecovery, ladle.MagnesiumRecoveryPercent, ladle.MagnesiumRecoveryPercent - RecoveryBand, ladle.MagnesiumRecoveryPercent + RecoveryBand, FigureStanding.Shop, $"Own heats, invented for the demo, within what is printed: {ladle.Sources.Recovery.Text}"),
            new(LadleFigureKind.MgFade, ladle.FadePercentPerMinute, 0.001, 0.002, FigureStanding.Published, ladle.Sources.Fade.Text),
            new(LadleFigureKind.TreatmentLoss, ladle.TreatmentLossKelvin, null, null, FigureStanding.Assumed, ladle.Sources.HeatLoss.Text),
            new(LadleFigureKind.LeastPouring, LeastPouringC, null, null, FigureStanding.Shop, "House rule, invented for the demo"),
            new(LadleFigureKind.MostTreatment, MostTreatmentC, null, null, FigureStanding.Shop, "House rule, invented for the demo"),
            new(LadleFigureKind.InoculationMinutes, InoculationMinutes, 7, 12, FigureStanding.Shop, "House rule, invented for the demo; 7 to 12 minutes are usual where iron is poured by hand (Huerta and Popovski, AFS, 2005, read in an excerpt)"),
        ];
        foreach (var figure in figures)
        {
            await hands.Do(hands.The<SetLadleFigure>(), Role.Administrator, new(
                DemoKey.Of($"ladle/{ladle.Code}/{figure.Kind}"), hands.Now, ladleId, await Version(hands, ladleId), figure.Kind, figure.Value, figure.Least, figure.Most,
                figure.Standing, figure.Source));
        }
    }

    private static async Task<Guid> Version(DemoHands hands, long ladleId)
    {
        await using var db = await hands.The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
        return await db.Ladles.Where(l => l.Id == ladleId).Select(l => l.Version).SingleAsync();
    }
}

using MeltShop.Records.Sites;

namespace MeltShop.Operations.Sites;

/// <summary>A figure of a ladle with its band and where it comes from.</summary>
/// <param name="Least">Least that it may be; null where nobody knows.</param>
/// <param name="Most">Most that it may be.</param>
public sealed record LadleFigureInput(LadleFigureKind Kind, double Value, double? Least, double? Most, FigureStanding Standing, string Source);

/// <summary>Writes a figure of a ladle and brings its row to it.</summary>
internal static class LadleFigures
{
    public static void Add(this Writing writing, long ladleId, LadleFigureInput figure, string? reason = null) => writing.Db.Add(new LadleFigure
    {
        EntryKey = writing.Stamp.EntryKey,
        PersonId = writing.Stamp.PersonId,
        ObservedAt = writing.Stamp.ObservedAt,
        EnteredAt = writing.Stamp.EnteredAt,
        Reason = reason,
        LadleId = ladleId,
        Kind = figure.Kind,
        Value = figure.Value,
        Least = figure.Least,
        Most = figure.Most,
        Standing = figure.Standing,
        Source = figure.Source,
    });

    public static void Take(this Ladle ladle, LadleFigureKind kind, double value)
    {
        switch (kind)
        {
            case LadleFigureKind.Capacity: ladle.CapacityKg = value; break;
            case LadleFigureKind.FillLimit: ladle.FillLimitKg = value; break;
            case LadleFigureKind.Pocket: ladle.PocketKg = value; break;
            case LadleFigureKind.HeightToDiameter: ladle.HeightToDiameter = value; break;
            case LadleFigureKind.MgRecovery: ladle.MgRecoveryPercent = value; break;
            case LadleFigureKind.MgFade: ladle.MgFadePercentPerMinute = value; break;
            case LadleFigureKind.HeatLoss: ladle.HeatLossKPerMinute = value; break;
            case LadleFigureKind.TreatmentLoss: ladle.TreatmentLossK = value; break;
            case LadleFigureKind.LeastPouring: ladle.LeastPouringC = value; break;
            case LadleFigureKind.MostTreatment: ladle.MostTreatmentC = value; break;
            case LadleFigureKind.InoculationMinutes: ladle.InoculationMinutes = value; break;
            case LadleFigureKind.HouseMinutes: ladle.HouseMinutes = value; break;
            case LadleFigureKind.WireMagnesium: ladle.WireMgGramsPerMetre = value; break;
            default: ladle.WireMetresPerMinute = value; break;
        }
    }
}

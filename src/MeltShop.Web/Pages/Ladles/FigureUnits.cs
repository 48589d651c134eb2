using MeltShop.Records.Sites;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What each figure of a ladle is, and its unit.</summary>
internal static class FigureUnits
{
    public static Dimension DimensionOf(LadleFigureKind kind) => kind switch
    {
        LadleFigureKind.Capacity or LadleFigureKind.FillLimit or LadleFigureKind.Pocket => Dimension.Mass,
        LadleFigureKind.LeastPouring or LadleFigureKind.MostTreatment => Dimension.Temperature,
        LadleFigureKind.HeatLoss or LadleFigureKind.TreatmentLoss => Dimension.TemperatureDifference,
        _ => Dimension.Plain,
    };

    /// <summary>The shop's where it chose one.</summary>
    public static string Of(LadleFigureKind kind) => kind switch
    {
        LadleFigureKind.MgRecovery => "%",
        LadleFigureKind.MgFade => "%/min",
        LadleFigureKind.HeatLoss => TemperatureText.PerMinute,
        LadleFigureKind.InoculationMinutes or LadleFigureKind.HouseMinutes => "min",
        LadleFigureKind.WireMagnesium => "g/m",
        LadleFigureKind.WireSpeed => "m/min",
        _ => ShopUnits.Current.Of(DimensionOf(kind)).Sign,
    };

    /// <summary>A recorded figure in its unit.</summary>
    public static double Shown(LadleFigureKind kind, double recorded) => ShopUnits.Current.Of(DimensionOf(kind)).Readable(recorded);
}

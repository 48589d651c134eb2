using MeltShop.Records.Sites;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>The unit of each figure of a ladle.</summary>
internal static class FigureUnits
{
    public static string Of(LadleFigureKind kind) => kind switch
    {
        LadleFigureKind.Capacity or LadleFigureKind.FillLimit or LadleFigureKind.Pocket => "kg",
        LadleFigureKind.MgRecovery => "%",
        LadleFigureKind.MgFade => "%/min",
        LadleFigureKind.HeatLoss => "K/min",
        LadleFigureKind.TreatmentLoss => "K",
        LadleFigureKind.LeastPouring or LadleFigureKind.MostTreatment => "°C",
        LadleFigureKind.InoculationMinutes or LadleFigureKind.HouseMinutes => "min",
        LadleFigureKind.WireMagnesium => "g/m",
        LadleFigureKind.WireSpeed => "m/min",
        _ => "",
    };
}

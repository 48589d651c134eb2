using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Where the shop feeds wire.</summary>
internal static class WireStation
{
    /// <summary>The ladle itself where it has a feeder, else the first station that has one; null where the shop has none.</summary>
    public static LadleEquipment? Of(LadleView view) =>
        view.Ladles.Where(l => l.WireMgGramsPerMetre is > 0).OrderByDescending(l => l.Id == view.Treated?.LadleId).FirstOrDefault();
}

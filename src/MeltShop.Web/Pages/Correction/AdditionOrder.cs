using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Reading.Yard;

namespace MeltShop.Web.Pages.Correction;

/// <summary>
/// The order in which additions go into a bath: cold metal first, then carbon before silicon, which keeps carbon from dissolving
/// (common practice, no source).
/// </summary>
public static class AdditionOrder
{
    public static IReadOnlyList<PlanLine> Of(IReadOnlyList<PlanLine> lines, IReadOnlyList<MaterialView> materials) =>
        [.. lines.OrderBy(line => Place(materials.FirstOrDefault(m => m.Code == line.Code)?.Analysis?.Analysis())).ThenByDescending(line => line.Kg)];

    private static int Place(Analysis? analysis) => analysis switch
    {
        null => 1,
        _ when analysis.OrZero(Element.Si) >= 20 => 3,
        _ when analysis.OrZero(Element.C) >= 50 => 2,
        _ => 1,
    };
}

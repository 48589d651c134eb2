using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Records.Yard;
using MeltShop.Web.Demo;

namespace MeltShop.Web.Tests.Demo;

/// <summary>The charge of a demo heat: 6 t with a heel of 600 kg of the same iron, from the demo stock.</summary>
internal static class DemoCharge
{
    public static ChargeProblem Of(DemoCatalogue catalogue, DemoGrade grade, Func<DemoMaterial, bool>? take = null) => new()
    {
        MeltKg = 6000,
        Heel = Metal.Of(600, DemoIron.AtAims(grade)),
        Materials = [.. catalogue.Materials.Where(m => m.Uses.Contains(MaterialUses.Charge) && take?.Invoke(m) != false).Select(Material)],
        Limits = [.. grade.Furnace.Select(r => new QuantityLimit(DemoIron.Quantity(r), r.Least, r.Most, r.Margin))],
    };

    private static ChargeMaterial Material(DemoMaterial material) => new()
    {
        Code = material.Code,
        PricePerTonne = (double)material.Demo.PricePerTonne,
        Composition = material.Composition,
        SpreadPercent = material.Spread,
        AvailableKg = material.Demo.StockKg,
        MaxPercent = material.MaxSharePercent ?? 100,
    };
}

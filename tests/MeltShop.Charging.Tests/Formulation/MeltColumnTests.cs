using MeltShop.Charging.Formulation;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Formulation;

/// <summary>What a kilogram costs, brings and scatters, by pencil.</summary>
public class MeltColumnTests
{
    [Fact]
    public void Kilogram_CostsItsPriceItsSlagAndItsMelting()
    {
        // 300 per tonne; 5 % dirt at 40 per tonne of slag; 500 kWh per tonne at 0.1; and 20 per tonne to be used up.
        var material = Material("a", 300, (Element.Si, 1)) with { SlagPercent = 5, MeltingKWhPerTonne = 500, UseUpBonusPerTonne = 20 };
        var column = MeltColumn.Of(material, slagCostPerTonne: 40, energyPricePerKWh: 0.1, weighedKg: 0);

        Assert.Equal([0.3, 0.002, 0.05, 0.352, 0.02], new[] { column.PricePerKg, column.SlagCostPerKg, column.EnergyCostPerKg, column.CostPerKg, column.BonusPerKg }.Select(c => Math.Round(c, 12)));
    }

    [Theory]
    [InlineData(0, 30, 120)] // the lesser of stock and greatest mass
    [InlineData(50, 50, 120)] // what is in is the least
    [InlineData(150, 150, 150)] // and stands over both
    public void Masses_AreBoundByWhatIsAskedAndByWhatIsIn(double weighedKg, double leastKg, double mostKg)
    {
        var (stock, greatest) = (Material("a", 300) with { MinKg = 30, AvailableKg = 120, MaxKg = 140 }, Material("a", 300) with { MinKg = 30, AvailableKg = 140, MaxKg = 120 });
        Assert.All([stock, greatest], m =>
        {
            var column = MeltColumn.Of(m, 0, 0, weighedKg);
            Assert.Equal((leastKg, mostKg), (column.LeastKg, column.MostKg));
        });
    }

    [Fact]
    public void Spread_ArrivesAsTheElementDoes()
    {
        // Of C 90 % arrive, of Si all: deviations of 0.1 and 0.36 points are 0.09 and 0.36 percent × kg, and in C + Si/3 √(0.09² + 0.12²) = 0.15.
        var column = MeltColumn.Of(Material("a", 300, (Element.C, 3), (Element.Si, 2)).Yielding(100, (Element.C, 90)).Scattering((Element.C, 0.1), (Element.Si, 0.36), (Element.Mn, 0)));

        Assert.Equal(0.09, column.Scatter(new Dictionary<Element, double> { [Element.C] = 1 }), 1e-12);
        Assert.Equal(0.15, column.Scatter(new Dictionary<Element, double> { [Element.C] = 1, [Element.Si] = 1.0 / 3, [Element.Mn] = 1 }), 1e-12);
        Assert.Equal(0, column.Scatter(new Dictionary<Element, double> { [Element.P] = 1 }));
    }

    [Theory]
    [InlineData(500, 500)]
    [InlineData(5000, 2997)] // a thousandth of the bath stays
    public void TappingOff_TakesTheBathAsItIs(double mostKg, double takenKg)
    {
        var column = MeltColumn.TapOff(Metal.Of(3000, Analysis.Of((Element.C, 3.6))), mostKg, costPerTonne: 20);

        Assert.Equal((0, takenKg), (column.LeastKg, Math.Round(column.MostKg, 9)));
        Assert.Equal((-1, -0.036), (column.LiquidKg, Math.Round(column.ElementKg(Element.C), 12)));
        Assert.Equal((0.02, 0.02), (column.PricePerKg, column.CostPerKg));
        Assert.Equal(0, column.Scatter(new Dictionary<Element, double> { [Element.C] = 1 }));
    }
}

using CsCheck;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Heat;

namespace MeltShop.Metallurgy.Tests.Heat;

public class HeatTests
{
    // E. Doetsch prints 385 kWh/t at 1480 °C; the rest of the line by 0.23 kWh/(t·K), by hand.
    [Theory]
    [InlineData(1350, 355.1)]
    [InlineData(1400, 366.6)]
    [InlineData(1450, 378.1)]
    [InlineData(1480, 385)]
    [InlineData(1530, 396.5)]
    [InlineData(1550, 401.1)]
    public void HeatContent_Line_PassesThePrintedPoint(double temperatureC, double expected) =>
        Assert.Equal(expected, HeatContent.KWhPerTonne(temperatureC), 1);

    // Supplier's page on the time to melt 1000 kg of cast iron: 560 kWh at 500 kW 67.2 min, at 700 kW 48 min.
    [Theory]
    [Printed("Supplier, time required to melt 1000 kg of cast iron")]
    [InlineData(500, 67.2)]
    [InlineData(700, 48)]
    public void Minutes_PrintedPowers_GiveThePrintedTimes(double powerKW, double expected) => Assert.Equal(expected, MeltingEnergy.Minutes(560, powerKW), 1);

    [Theory]
    [Printed("Induction-furnace handbook page; E. Doetsch, Use of thermochemical data in inductive melting")]
    [InlineData(585, 1480, 66)]
    [InlineData(640, 1480, 60)]
    [InlineData(560, 1550, 72)]
    public void Energy_PublishedConsumption_ImpliesTheEfficiencyOfTheTrade(double kWhPerTonne, double temperatureC, double efficiency)
    {
        // Induction-furnace handbook: 585 to 640 kWh/t in practice, 560 at 1550 °C at best: 60 to 72 % of Doetsch's heat content.
        Assert.InRange(MeltingEnergy.EnergyKWh(1000, temperatureC, efficiency), kWhPerTonne * 0.99, kWhPerTonne * 1.01);
    }

    [Fact]
    public void Energy_HeelAndSlag_AreHeatedToo()
    {
        // By hand: (5000·385 + 1000·0.23·80 + 50·550)/1000/0.7.
        Assert.Equal((5000 * 385 + 1000 * 0.23 * 80 + 50 * 550.0) / 700, MeltingEnergy.EnergyKWh(5000, 1480, 70, 1000, 1400, 50), 9);
    }

    [Fact]
    [Printed("Foundry handbook page on heat losses")]
    public void Holding_ThirteenTonnes_CoolsAboutOneKelvinAMinute()
    {
        // Foundry handbook page on heat losses: 120 + 20 + 35 = 175 kW for a 13 t crucible furnace.
        Assert.Equal(58.5, Holding.CoolingKPerHour(120 + 20 + 35, 13_000), 1);
    }

    [Theory]
    [InlineData(378, 16.3)] // cold cast iron
    [InlineData(341, 14.7)] // cold steel
    public void Addition_OnePercentCold_CoolsAsWorkedOut(double kWhPerTonne, double expected) =>
        Assert.Equal(expected, AdditionHeat.DropK(1000, [(10, kWhPerTonne)]), 1);

    [Fact]
    public void Addition_ThreeAtOnce_CoolsAsWorkedOut()
    {
        // The simultaneous additions of graphite, ferrosilicon and ferromanganese into 3 t, heats 1180, −160, 150 kWh/t, by hand: 4.3245 K, masses to 1e-5.
        Assert.InRange(AdditionHeat.DropK(3000, [(3.80487, 1180), (13.57466, -160), (4.58649, 150)]), 4.3244, 4.3246);
    }

    [Fact]
    public void SteelHeat_AlloysAndCarburisers_HaveNoDefault()
    {
        Assert.Equal(341, AdditionHeat.SteelKWhPerTonne(Analysis.Of((Element.C, 0.1)), 1450));
        Assert.Equal(341 + 0.23 * 50, AdditionHeat.SteelKWhPerTonne(Analysis.Of((Element.C, 4.2), (Element.Si, 2.5)), 1500)!.Value, 12);
        Assert.Null(AdditionHeat.SteelKWhPerTonne(Analysis.Of((Element.Si, 10)), 1450));
    }

    [Theory]
    [InlineData("C 3.4 Si 2.0", 341.0)]
    [InlineData("C 98.5", 1180.0)]
    [InlineData("Si 75", -160.0)]
    [InlineData("Si 45", -96.0)]
    [InlineData("C 6.8 Mn 75", null)]
    [InlineData("C 30 Si 65", null)]
    [InlineData("Si 20", null)]
    public void AdditionGuide_Material_HasItsRememberedHeatOrNone(string analysis, double? expected)
    {
        var words = analysis.Split(' ');
        var percents = words.Chunk(2).Select(w => KeyValuePair.Create(Element.Parse(w[0]), double.Parse(w[1], System.Globalization.CultureInfo.InvariantCulture)));

        Assert.Equal(expected, AdditionGuide.KWhPerTonne(Analysis.Of(percents), 1450));
    }

    [Fact]
    public void Ladle_PublishedRates_LoseWhatTheyImply()
    {
        // Foundry text: 4 t crucible ladle 2 K/min, 1 t drum 2.5 K/min; 12 minutes by hand.
        Assert.Equal(24, TemperatureBudget.Ladle(2, 12).LossK);
        Assert.Equal(30, TemperatureBudget.Ladle(2.5, 12).LossK);
        Assert.Equal([3.2, 4.0, 5.0], new[] { 1000.0, 500, 250 }.Select(kg => Math.Round(LadleLoss.KPerMinute(2, 4000, kg), 1)));
    }

    [Fact]
    public void Budget_BackAndForth_IsTheSameTemperature() => Law.Holds(
        Gen.Select(Gen.Double[1300, 1450], Gen.Double[0, 100].Array[0, 6]),
        one =>
        {
            var (pouring, losses) = one;
            var budget = new TemperatureBudget(pouring, [.. losses.Select(l => new HeatLossTerm("loss", l))]);

            Law.Close(pouring, budget.LastMouldC(budget.TappingC));
            Assert.Null(budget.BrokenBy(budget.TappingC + 1e-6));
        });

    [Fact]
    public void Budget_FurnaceTooCold_NamesTheLossThatBreaksIt()
    {
        var budget = new TemperatureBudget(1380, [new("stream", 30), new("treatment", 50), new("ladle", 24)]);

        Assert.Equal(1484, budget.TappingC);
        Assert.Equal("ladle", budget.BrokenBy(1480)!.Name);
        Assert.Equal("treatment", budget.BrokenBy(1450)!.Name);
        Assert.Equal("stream", budget.BrokenBy(1400)!.Name);
        Assert.Null(budget.BrokenBy(1484));
    }

    [Fact]
    public void MinutesAbove_Readings_CountsOnlyTheTimeAbove()
    {
        // By hand: 1400 → 1500 in 10 min is above 1450 for 5; 1500 held for 20; down to 1450 in 5.
        TemperatureReading[] readings = [new(0, 1400), new(10, 1500), new(30, 1500), new(35, 1450), new(40, 1450)];

        Assert.Equal(30, TemperatureReading.MinutesAbove(readings, 1450), 12);
        Assert.Equal(0, TemperatureReading.MinutesAbove(readings, 1500), 12);
        Assert.Equal(40, TemperatureReading.MinutesAbove(readings, 1399), 12);
    }
}

using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Tests.Chain;

public class CarburiserTests
{
    // Carburisers as a supplier of recarburisers lists them (typical C, S, N); kilograms for +3.0 % C on a tonne at 90 % recovery, and the sulphur and nitrogen
    // they bring, by hand with the simple formula.
    [Theory]
    [InlineData("synthetic graphite", 99.00, 0.040, 0.010, 33.7, 0.0013, 3)]
    [InlineData("graphitised petroleum coke", 98.90, 0.070, 0.040, 33.7, 0.0024, 13)]
    [InlineData("low-sulphur petroleum coke", 99.55, 0.100, 0.07, 33.5, 0.0033, 23)]
    [InlineData("electrically calcined anthracite", 95.57, 0.250, 0.400, 34.9, 0.0087, 140)]
    [InlineData("high-sulphur petroleum coke", 99.30, 1.200, 1.000, 33.6, 0.040, 336)]
    [InlineData("metallurgical coke", 85.20, 1.000, 1.500, 39.1, 0.039, 587)]
    public void Carburiser_ThreePercentOfCarbon_BringsItsSulphurAndNitrogen(
        string name, double carbon, double sulphur, double nitrogen, double kg, double sulphurPercent, double nitrogenPpm)
    {
        var needed = SimpleAddition.Kg(1000, 0.2, 3.2, carbon, 90);

        Law.Near(kg, needed, 0.06);
        Law.Near(sulphurPercent, needed * sulphur / 1000, sulphurPercent * 0.05);
        Law.Near(nitrogenPpm, needed * nitrogen / 1000 * 10_000, nitrogenPpm * 0.05 + 0.5);

        // In the balance the same weighed mass stays short of 3.2 %, for it dilutes: the carbon that arrives over the larger bath.
        var arrival = Arrival.PerKilogram(new()
        {
            Analysis = Analysis.Of((Element.C, Math.Min(carbon, 98)), (Element.S, sulphur)),
            RecoveryPercent = new Dictionary<Element, double> { [Element.C] = 90 },
        });
        Assert.True(Metal.Of(1000, Analysis.Of((Element.C, 0.2))).Plus(arrival, needed).Percent(Element.C) < 3.2, name);
    }

    [Fact]
    [Printed("K. Janerka in S. Kumar (ed.), Integrated Waste Management, vol. I")]
    public void Carburiser_AllSteelCharge_NeedsAboutWhatIsPublished()
    {
        // K. Janerka in S. Kumar (ed.), Integrated Waste Management, vol. I: 3.2 % C from steel alone takes 4.2 % of carburiser: 0.74 to 0.76 of it arrives as carbon,
        // e.g. 95 % C at 79 %.
        var kg = SimpleAddition.Kg(100, 0.1, 3.2, 95, 79);

        Assert.InRange(kg, 4.0, 4.25);
    }

    [Fact]
    public void Charge_PigAndSteel_ImplyTheCarbonOfPigIron()
    {
        // The same source: 3.2 % C from 74 % pig iron and 26 % steel: a pig iron of 4.25 to 4.29 % C for steel of 0.20 to 0.10 %.
        foreach (var (pig, steel) in new[] { (4.254, 0.20), (4.289, 0.10) })
        {
            var charge = Metal.Of(74, Analysis.Of((Element.C, pig))).Plus(Metal.Of(26, Analysis.Of((Element.C, steel))));
            Assert.Equal(3.2, charge.Percent(Element.C), 3);
        }
    }

    [Fact]
    [Printed("AFS-type note on late sulphur in compacted-graphite iron")]
    public void Sulphur_AddedLate_IsAsPrinted()
    {
        // Note on late sulphur in compacted-graphite iron (AFS): 0.49 lb of sulphur on 1550 lb → 0.032 %; 0.225 lb on 1500 lb → 0.015 %.
        Assert.Equal(0.0316, Added(1550, 0.49), 4);
        Assert.Equal(0.0150, Added(1500, 0.225), 4);

        static double Added(double iron, double sulphur) => Metal.Of(iron, Analysis.Empty).Plus(Metal.Of(sulphur, Analysis.Of((Element.S, 100)))).Percent(Element.S);
    }
}

using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Tests.Chain;

public class AdditionTests
{
    // Source: supplier's question-and-answer page on silicon metal into a bath, two printed results.
    [Theory]
    [Printed("Supplier's questions and answers on silicon metal")]
    [InlineData(5_000, 0.6, 1.2, 85, 35.3)]
    [InlineData(10_000, 0.8, 1.6, 80, 100)]
    public void SimpleAddition_PrintedCase_GivesThePrintedMass(double bathKg, double now, double target, double recovery, double expected) =>
        Assert.Equal(expected, SimpleAddition.Kg(bathKg, now, target, 100, recovery), 1);

    // The same cases with the mass of the addition counted, and two more: worked out by hand from the balance.
    [Theory]
    [InlineData("Si", 5_000, 0.6, 1.2, 100, 85, 35.723)]
    [InlineData("Si", 10_000, 0.8, 1.6, 100, 80, 101.626)]
    [InlineData("Si", 1_000, 1.80, 2.10, 75, 90, 4.576)]
    [InlineData("C", 1_000, 3.20, 3.40, 99, 90, 2.325)]
    // Dilution with steel of 0.10 %: m = M (x0 − xt)/(xt − x), the standard formula.
    [InlineData("C", 1_000, 3.60, 3.40, 0.10, 100, 60.606)]
    [InlineData("Cu", 1_000, 0.90, 0.70, 0.10, 100, 333.333)]
    public void Kg_Balance_GivesTheMassThatReachesTheTarget(
        string symbol, double bathKg, double now, double target, double content, double recovery, double expected)
    {
        var element = Element.Parse(symbol);
        var bath = Metal.Of(bathKg, Analysis.Of((element, now)));
        var material = Arrival.PerKilogram(new()
        {
            Analysis = Analysis.Of((element, content)),
            RecoveryPercent = new Dictionary<Element, double> { [element] = recovery },
        });

        var kg = Addition.Kg(bath, material, element, target)!.Value;

        Assert.Equal(expected, kg, 3);
        Assert.Equal(target, bath.Plus(material, kg).Percent(element), 12);
    }

    [Fact]
    public void Kg_MaterialPoorerThanTheTarget_CannotRaiseIt()
    {
        var bath = Metal.Of(1_000, Analysis.Of((Element.C, 3.2)));
        var steel = Arrival.PerKilogram(new() { Analysis = Analysis.Of((Element.C, 0.1)) });

        Assert.Null(Addition.Kg(bath, steel, Element.C, 3.4));
        Assert.Equal(0, Addition.Kg(bath, steel, Element.C, 3.2));
    }

    // Three additions at once, own case: each brings the others along, so that one after the other by the simple formula falls short.
    [Fact]
    public void Plus_ThreeAdditionsAtOnce_ReachesAllThreeTargets()
    {
        var graphite = Composition(analysis: [(Element.C, 99)], recovery: [(Element.C, 90)]);
        var ferrosilicon = Composition([(Element.C, 0.1), (Element.Si, 75), (Element.Mn, 0.3)], [(Element.C, 90), (Element.Si, 92), (Element.Mn, 90)]);
        var ferromanganese = Composition([(Element.C, 6.8), (Element.Si, 1), (Element.Mn, 75)], [(Element.C, 90), (Element.Si, 90), (Element.Mn, 90)]);

        var after = Metal.Of(3_000, Analysis.Of((Element.C, 3.25), (Element.Si, 1.70), (Element.Mn, 0.55)))
            .Plus(graphite, 3.80487).Plus(ferrosilicon, 13.57466).Plus(ferromanganese, 4.58649);

        Assert.Equal(3_020.3897, after.Kg, 4);
        Assert.Equal(3.35, after.Percent(Element.C), 6);
        Assert.Equal(2.00, after.Percent(Element.Si), 6);
        Assert.Equal(0.65, after.Percent(Element.Mn), 6);
    }

    private static Arrival Composition((Element, double)[] analysis, (Element Element, double Percent)[] recovery) => Arrival.PerKilogram(new()
    {
        Analysis = Analysis.Of(analysis),
        RecoveryPercent = recovery.ToDictionary(r => r.Element, r => r.Percent),
    });
}

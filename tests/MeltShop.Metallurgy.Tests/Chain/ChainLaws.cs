using CsCheck;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Tests.Chain;

public class ChainLaws
{
    private static readonly Gen<MaterialComposition> Materials =
        from c in Gen.Double[0, 10]
        from si in Gen.Double[0, 80]
        from mn in Gen.Double[0, 5]
        from yield in Gen.Double[1, 100]
        from recovery in Gen.Double[0, 100]
        select new MaterialComposition
        {
            Analysis = Analysis.Of((Element.C, c), (Element.Si, si), (Element.Mn, mn)),
            MetallicYieldPercent = yield,
            RecoveryPercent = new Dictionary<Element, double> { [Element.C] = recovery },
        };

    [Fact]
    public void Arrival_WithWhatIsLost_MakesUpTheWeighedMass() => Law.Holds(Materials, material =>
    {
        var arrival = Arrival.PerKilogram(material);
        var dirt = 1 - material.MetallicYieldPercent / 100;
        var burnt = material.MetallicYieldPercent / 100 * material.Analysis.OrZero(Element.C) / 100 * (1 - material.Recovery(Element.C) / 100);

        Law.Close(1, arrival.LiquidKg + dirt + burnt);
        Law.Close(arrival.LiquidKg, arrival.IronKg + arrival.Elements.Sum(arrival.ElementKg));
    });

    [Fact]
    public void Metal_PlusInAnyOrder_IsTheSameMetal() => Law.Holds(Gen.Select(Materials, Materials, Gen.Double[0, 5000], Gen.Double[0, 5000]), pair =>
    {
        var (one, other, kg, otherKg) = pair;
        var (a, b) = (Arrival.PerKilogram(one), Arrival.PerKilogram(other));
        var heel = Metal.Of(600, Analysis.Of((Element.C, 3.6)));
        var (first, second) = (heel.Plus(a, kg).Plus(b, otherKg), heel.Plus(b, otherKg).Plus(a, kg));

        Law.Close(first.Kg, second.Kg);
        Law.Close(first.Percent(Element.Si), second.Percent(Element.Si));
        Law.Close(first.Kg, heel.Plus(Metal.None.Plus(a, kg).Plus(b, otherKg)).Kg);
    });

    [Fact]
    public void Metal_TappedAndPouredBack_IsWhole() => Law.Holds(Gen.Select(Materials, Gen.Double[1, 5000], Gen.Double[0, 1]), one =>
    {
        var (material, kg, share) = one;
        var bath = Metal.None.Plus(Arrival.PerKilogram(material), kg);
        var tapped = bath.Less(share * bath.Kg);
        var back = tapped.Plus(bath.Less(bath.Kg - share * bath.Kg));

        Law.Close(bath.Kg, back.Kg);
        Law.Close(bath.Percent(Element.C), back.Percent(Element.C));
        Law.Close(bath.Percent(Element.C), share < 1 ? tapped.Percent(Element.C) : bath.Percent(Element.C));
    });

    [Fact]
    public void Metal_WithoutAnElement_LosesThatMassOnly()
    {
        var after = Metal.Of(1000, Analysis.Of((Element.C, 3.6), (Element.S, 0.02))).Without(Element.S, 0.1);

        Assert.Equal(999.9, after.Kg, 12);
        Assert.Equal(0.1, after.ElementKg(Element.S), 12);
        Assert.Equal(36, after.ElementKg(Element.C), 12);
        Assert.Throws<ArgumentOutOfRangeException>(() => after.Without(Element.S, 0.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => after.Less(1_000));
    }
}

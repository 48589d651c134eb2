using CsCheck;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;

namespace MeltShop.Metallurgy.Tests.Route;

/// <summary>What a window can bound beside elements: the same number as the derived quantity, and rows of a plan that say the same as its bounds.</summary>
public class WindowQuantityTests
{
    private static readonly Gen<Analysis> Irons = Gen.Select(
        Gen.Select(Gen.Double[2.8, 3.6], Gen.Double[1.2, 2.8], Gen.Double[0, 0.2], Gen.Double[0.1, 1.2], Gen.Double[0.005, 0.12]),
        Gen.Select(Gen.Double[0, 1.0], Gen.Double[0, 0.05], Gen.Double[0, 0.02], Gen.Double[0, 0.015], Gen.Double[0, 0.3]),
        (main, rest) => Analysis.Of(
            (Element.C, main.Item1), (Element.Si, main.Item2), (Element.P, main.Item3), (Element.Mn, main.Item4), (Element.S, main.Item5), (Element.Cu, rest.Item1),
            (Element.Ti, rest.Item2), (Element.Sn, rest.Item3), (Element.N, rest.Item4), (Element.Cr, rest.Item5), (Element.Ni, 0.1)));

    [Fact]
    public void Value_OfEachDerivedOne_IsThatOfTheCalculation() => Law.Holds(Irons, analysis =>
    {
        foreach (var told in DerivedQuantities.Of(analysis).Concat(FurtherQuantities.Of(analysis)).Where(told => told.Value is not null))
        {
            if (WindowQuantity.Find(told.Name) is not { } quantity) continue;
            Assert.Equal(told.Value!.Value, quantity.Value(analysis), 9);
            Assert.Equal(told.Unit, quantity.Unit);
        }
    });

    [Fact]
    public void Rows_OfEachDerivedOne_HoldWhereItsBoundsHold() => Law.Holds(Gen.Select(Irons, Gen.Double[-0.02, 0.02]), one =>
    {
        var (analysis, off) = one;
        foreach (var quantity in WindowQuantity.Derived.Where(quantity => quantity.IsMeantFor(analysis)))
        {
            var value = quantity.Value(analysis);
            var bound = value * (1 + off);
            if (bound <= 0 || (quantity.Name == "ferritePercent" && (bound >= 100 || value >= 100)) || Math.Abs(value - bound) < 1e-9) continue;
            Assert.True(value >= bound == Met(quantity.Rows(new(Least: bound)), analysis), $"{quantity.Name} at least {bound} of {analysis}");
            Assert.True(value <= bound == Met(quantity.Rows(new(Most: bound)), analysis), $"{quantity.Name} at most {bound} of {analysis}");
        }
    });

    [Fact]
    public void Row_NearItsBound_ReadsAsTheQuantityItself() => Law.Holds(Irons, analysis =>
    {
        foreach (var quantity in WindowQuantity.Derived.Where(quantity => quantity.IsMeantFor(analysis) && quantity.Value(analysis) is > 0 and < 100 or > 150))
        {
            var value = quantity.Value(analysis);
            var row = quantity.Rows(new(Least: value)).Single();

            Assert.InRange(WindowQuantity.Told(quantity.Name, row.Quantity.Value(analysis)) / value, 1 - 1e-9, 1 + 1e-9);
            Assert.InRange(WindowQuantity.Told(quantity.Name, row.Bounds.Least!.Value) / value, 1 - 1e-9, 1 + 1e-9);
        }
    });

    // Sc = C / (4.26 − (Si + P)/3): for C 3.40, Si 2.10, P 0.06 the slopes are 1/3.54 and 3.40/(3·3.54²), by hand.
    [Fact]
    public void Slopes_OfTheDegreeOfSaturation_AreItsDerivatives()
    {
        var slopes = WindowQuantity.Find("Sc")!.Slopes(Analysis.Of((Element.C, 3.40), (Element.Si, 2.10), (Element.P, 0.06)));

        Assert.Equal(1 / 3.54, slopes[Element.C], 6);
        Assert.Equal(3.40 / (3 * 3.54 * 3.54), slopes[Element.Si], 6);
    }

    [Fact]
    public void Missing_IsWhatTheQuantityCannotDoWithout()
    {
        var iron = Analysis.Of((Element.Mn, 0.3), (Element.Si, 2.5), (Element.Cu, 0.3));

        Assert.Empty(WindowQuantity.Find("pearliteFactor")!.Missing(iron));
        Assert.Contains(Element.Sn, WindowQuantity.Find("pearliteFactor")!.TakenAsZero(iron));
        Assert.Equal([Element.C, Element.P], WindowQuantity.Find("CE")!.Missing(iron).Order());
        Assert.Equal(7, WindowQuantity.Find("traceFactor")!.Missing(iron).Count);
        Assert.Empty(WindowQuantity.Find("traceFactor")!.Missing(iron.With(Element.Ti, 0.02)));
        Assert.Null(WindowQuantity.Find("Fe"));
        Assert.Null(WindowQuantity.Find("hardness"));
    }

    [Fact]
    public void ManganeseBalance_OfTreatedIron_HasNoMeaning()
    {
        var grey = Analysis.Of((Element.Mn, 0.7), (Element.S, 0.08));

        Assert.True(WindowQuantity.Find("manganeseBalance")!.IsMeantFor(grey));
        Assert.False(WindowQuantity.Find("manganeseBalance")!.IsMeantFor(grey.With(Element.Mg, 0.04)));
    }

    private static bool Met(IEnumerable<QuantityBounds> rows, Analysis analysis) => rows.All(row =>
        !(row.Quantity.Value(analysis) < row.Bounds.Least) && !(row.Quantity.Value(analysis) > row.Bounds.Most));
}

using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Charging.WhatIf;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.WhatIf;

/// <summary>How far prices may move before the plan does: by pencil, and on generated yards against GLPK at the moved price.</summary>
public class PriceRangeTests
{
    // 1000 kg at 1.5 % of Si or more: a holds 1 % at 300, b 2 % at 400, c 3 % at 600. Half a and half b; b would give way to a and c where 400 > (300 + 600) / 2.
    private static readonly ChargeProblem Three = new()
    {
        MeltKg = 1000,
        Materials = [Material("a", 300, (Element.Si, 1)), Material("b", 400, (Element.Si, 2)), Material("c", 600, (Element.Si, 3))],
        Limits = [Limit(Element.Si, 1.5, null)],
    };

    [Fact]
    public void Ranges_OfThreeMaterials_AreThoseOfThePencil()
    {
        var ranges = Of(Three);

        // a: dearer than b and nothing of it stays; cheaper than 200, c and it do with less than b does.
        Require(ranges[0], 300, 200, 400);
        Require(ranges[1], 400, 300, 450);
        // c comes in below 500 and otherwise stays out.
        Require(ranges[2], 600, 500, null);
    }

    [Fact]
    public void Range_OfAMaterialAtItsStock_StaysAtAnyPriceBelow()
    {
        var ranges = Of(Three with { Materials = [Three.Materials[0] with { AvailableKg = 100 }, .. Three.Materials.Skip(1)] });

        Assert.Null(ranges[0].Least);
        Assert.Equal(400, ranges[0].Most!.Value, 1e-6);
    }

    [Fact]
    public void Range_OfACompulsoryMass_StaysAtAnyPriceAbove()
    {
        var ranges = Of(Three with { Materials = [.. Three.Materials.Take(2), Three.Materials[2] with { MinKg = 10 }] });

        Assert.Null(ranges[2].Most);
        Assert.Equal(500, ranges[2].Least!.Value, 1e-6);
    }

    [Fact]
    public void Range_WhereTwoMaterialsAreAlike_EndsAtTodaysPrice()
    {
        var ranges = Of(Three with { Materials = [.. Three.Materials, Material("a again", 300, (Element.Si, 1))] });

        var used = ranges.Single(r => r.Code is "a" or "a again" && r.Least is { } least && least < 299);
        Assert.Equal(300, used.Most!.Value, 1e-6);
    }

    [Fact]
    public void Ranges_OfADegeneratePlan_AreTrueOnBothSides()
    {
        // b alone makes 2 % exactly: the vertex has more active rows than it needs. Up, b gives way to a and c at 450; down, nothing ever changes.
        var ranges = Of(Three with { Limits = [Limit(Element.Si, 2, null)] });

        Require(ranges[1], 400, null, 450);
        Require(ranges[0], 300, 200, null);
        Require(ranges[2], 600, 500, null);
    }

    [Fact]
    public void Ranges_WithWholePieces_AreNone() =>
        Assert.Empty(Of(Three with { MeltToleranceKg = 20, Materials = [Three.Materials[0] with { PieceKg = 10 }, .. Three.Materials.Skip(1)] }));

    [Fact]
    public void Ranges_OfAnImpossibleCharge_AreNone() => Assert.Empty(Of(Three with { Limits = [Limit(Element.Si, 4, null)] }));

    [Fact]
    public void Ranges_WithScatterThatBends_EndWhereTheyAre()
    {
        // Confidence makes the cheapest mix a smooth function of the prices: any change moves it a little.
        var problem = GreyIron.Problem(90, Limit(Element.C, 3.2, 3.5), Limit(Element.Si, 1.8, 2.2));
        var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);

        var used = Of(problem).Where(r => plan.Lines.Any(l => l.Code == r.Code)).ToList();
        Assert.NotEmpty(used);
        Assert.All(used, r => Assert.True(r.Least is null || r.Least <= r.PricePerTonne + 1e-3, $"{r}"));
        Assert.All(used, r => Assert.True(r.Most is null || r.Most >= r.PricePerTonne - 1e-3, $"{r}"));
    }

    [Fact]
    public async Task RandomYards_InsideTheRangeThePlanStaysAndOutsideABetterOneComes()
    {
        var faults = new List<string>();
        var compared = 0;
        foreach (var seed in Enumerable.Range(1, 8))
        {
            var (ends, found) = await PriceRangeComparison.Of(seed, 12, TestContext.Current.CancellationToken);
            compared += ends;
            faults.AddRange(found);
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.InRange(compared, 60, int.MaxValue);
    }

    private static IReadOnlyList<PriceRange> Of(ChargeProblem problem) => PriceRanges.Of(problem, TestContext.Current.CancellationToken);

    private static void Require(PriceRange range, double price, double? least, double? most)
    {
        Assert.Equal(price, range.PricePerTonne, 1e-9);
        Assert.Equal(least ?? double.NaN, range.Least ?? double.NaN, 1e-6);
        Assert.Equal(most ?? double.NaN, range.Most ?? double.NaN, 1e-6);
    }
}

using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Planning;

/// <summary>A charge made by hand is told all that it misses and nothing else. 1 kg weighed is 1 kg of iron: each number is worked by pencil.</summary>
public class MissesTests
{
    // 600 kg of a and 400 kg of b keep everything.
    private static readonly ChargeProblem Kept = new()
    {
        MeltKg = 1000, MeltToleranceKg = 50, Limits = [Limit(Element.Si, 1, 2, margin: 0.1)],
        Materials = [Material("a", 300, (Element.Si, 1)), Material("b", 400, (Element.Si, 2))],
    };

    private static ChargeMaterial A => Kept.Materials[0];

    public static TheoryData<ChargeProblem, double, double, Miss> Missed => new()
    {
        { Kept, 600, 399, new(MissKind.LiquidKg, "", false, 1000, 999) },
        { Kept, 600, 451, new(MissKind.LiquidKg, "", true, 1050, 1051) },
        { Kept, 920, 80, new(MissKind.Quantity, "Si", false, 1.1, 1.08) { Inward = 0.1 } },
        { Kept, 80, 920, new(MissKind.Quantity, "Si", true, 1.9, 1.92) { Inward = 0.1 } },
        { Of(A with { MinKg = 601 }), 600, 400, new(MissKind.MaterialKg, "a", false, 601, 600) },
        { Of(A with { MaxKg = 599 }), 600, 400, new(MissKind.MaterialKg, "a", true, 599, 600) },
        { Of(A with { AvailableKg = 590 }), 600, 400, new(MissKind.Stock, "a", true, 590, 600) },
        { Of(A with { MinPercent = 61 }), 600, 400, new(MissKind.MaterialPercent, "a", false, 61, 60) },
        { Of(A with { MaxPercent = 59 }), 600, 400, new(MissKind.MaterialPercent, "a", true, 59, 60) },
        { Of(A with { PieceKg = 250 }), 600, 400, new(MissKind.Pieces, "a", true, 500, 600) },
        { Of(A with { PieceKg = 220 }), 600, 400, new(MissKind.Pieces, "a", false, 660, 600) },
        { Kept with { WeighedKg = Kilograms(610, 0) }, 600, 400, new(MissKind.AlreadyIn, "a", false, 610, 600) },
        { Of(new GroupLimit { Name = "g", Codes = ["b"], MinKg = 401 }), 600, 400, new(MissKind.GroupKg, "g", false, 401, 400) },
        { Of(new GroupLimit { Name = "g", Codes = ["a", "b"], MaxKg = 999 }), 600, 400, new(MissKind.GroupKg, "g", true, 999, 1000) },
        { Of(new GroupLimit { Name = "g", Codes = ["b"], MinPercent = 41 }), 600, 400, new(MissKind.GroupPercent, "g", false, 41, 40) },
        { Of(new GroupLimit { Name = "g", Codes = ["b"], MaxPercent = 39 }), 600, 400, new(MissKind.GroupPercent, "g", true, 39, 40) },
        { Of(A with { BulkDensityTonnesPerM3 = 0.5 }) with { Volumes = [new("bucket", 1.1)] }, 600, 400, new(MissKind.Volume, "bucket", true, 1.1, 1.2) },
    };

    public static TheoryData<ChargeProblem> Just => new(
        Kept, Of(A with { MinKg = 600, MaxKg = 600, AvailableKg = 600, MinPercent = 60, MaxPercent = 60, PieceKg = 200 }),
        Kept with { WeighedKg = Kilograms(600, 400) },
        Of(A with { AvailableKg = 500 }) with { WeighedKg = Kilograms(600, 0) }, // it is in: the stock was wrong, not the charge
        Of(A with { PieceKg = 200 }) with { WeighedKg = Kilograms(400, 0) },
        Of(A with { PieceKg = 250 }) with { WeighedKg = Kilograms(100, 0) }, // 100 kg and two pieces
        Of(new GroupLimit { Name = "g", Codes = ["b"], MinKg = 400, MaxKg = 400, MinPercent = 40, MaxPercent = 40 }),
        Of(A with { BulkDensityTonnesPerM3 = 0.5 }) with { Volumes = [new("bucket", 1.2)] });

    [Theory]
    [MemberData(nameof(Missed))]
    public void Charge_ThatMissesOneThing_IsToldItAndByHowMuch(ChargeProblem problem, double a, double b, Miss expected)
    {
        var check = ChargeCheck.Of(problem, Kilograms(a, b));

        var miss = Assert.Single(check.Misses);
        Assert.Equal(expected, miss with { Asked = Math.Round(miss.Asked, 9), Value = Math.Round(miss.Value, 9) });
        Assert.Equal(Math.Abs(expected.Asked - expected.Value), miss.By, 1e-9);
        Assert.False(check.Holds);
    }

    [Theory]
    [MemberData(nameof(Just))]
    public void Charge_OnItsBounds_MissesNothing(ChargeProblem problem) => Assert.Empty(ChargeCheck.Of(problem, Kilograms(600, 400)).Misses);

    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(2, 1)]
    public void Mass_WithinAMillionthOfTheMelt_IsNoMiss(double millionths, int misses)
    {
        var off = millionths * 1e-6 * 1000; // the melt without its tolerance is the measure
        var below = ChargeCheck.Of(Kept, Kilograms(600, 400 - off));
        var over = ChargeCheck.Of(Of(A with { AvailableKg = 600 - off }), Kilograms(600, 400));
        var pieces = ChargeCheck.Of(Of(A with { PieceKg = 300 + millionths * 1e-6 * 300 }), Kilograms(300, 700));

        var group = ChargeCheck.Of(Of(new GroupLimit { Name = "g", Codes = ["b"], MinKg = 400 + off }), Kilograms(600, 400));
        var share = ChargeCheck.Of(Of(A with { MinPercent = 60 + 100 * off / 1000 }), Kilograms(600, 400));
        var room = ChargeCheck.Of(Of(A with { BulkDensityTonnesPerM3 = 0.05 }) with { Volumes = [new("bucket", 12 - 12 * millionths * 1e-6)] }, Kilograms(600, 400));

        Assert.All([below, over, pieces, group, share, room], c => Assert.Equal(misses, c.Misses.Count));
    }

    [Fact]
    public void Scatter_UnderConfidence_IsMissedAsTheMarginIs()
    {
        // Si is 1.4, and two deviations (97.724986805182 %) of 0.1 in six tenths are 0.12: from 1.1 it is far enough, from 1.3 it is not.
        var problem = Of(A.Scattering((Element.Si, 0.1))) with { ConfidencePercent = 97.724986805182 };

        Assert.Empty(ChargeCheck.Of(problem, Kilograms(600, 400)).Misses);
        var miss = Assert.Single(ChargeCheck.Of(problem with { Limits = [Limit(Element.Si, 1.3, 2)] }, Kilograms(600, 400)).Misses);
        Assert.Equal((false, 1.42), (miss.IsMax, Math.Round(miss.Asked, 9)));
    }

    [Fact]
    public void Nothing_Charged_MissesTheMassAndNoShareOrQuantity()
    {
        var problem = Of(A with { MinPercent = 10 }) with { Groups = [new() { Name = "g", Codes = ["a"], MinPercent = 10 }] };
        var check = ChargeCheck.Of(problem, Kilograms(0, 0));

        Assert.Equal(MissKind.LiquidKg, Assert.Single(check.Misses).Kind);
        Assert.Equal((0, 0, 0), (check.CostPerTonne, check.Groups.Single().Percent, check.Lines.Count));
    }

    [Fact]
    public void Excess_ThatIsWeighedIn_StandsAndNothingMore()
    {
        var problem = Of(A with { BulkDensityTonnesPerM3 = 0.5 }) with
        {
            WeighedKg = Kilograms(600, 0), Groups = [new() { Name = "g", Codes = ["a"], MaxKg = 500 }, new() { Name = "h", Codes = ["b"], MaxKg = 500 }], Volumes = [new("bucket", 1)],
        };
        var melt = ChargeOptimiser.MeltOf(problem);
        (MissKind Kind, string Name, double Most)[] standing = [(MissKind.MaterialKg, "a", 600), (MissKind.GroupKg, "g", 600), (MissKind.Volume, "bucket", 1.2)];

        Assert.All(standing, s => Assert.True(Stands(s.Kind, s.Name, s.Most), $"{s}"));
        Assert.All(standing, s => Assert.True(Stands(s.Kind, s.Name, s.Most + 5e-4), $"{s}"));
        Assert.All(standing, s => Assert.False(Stands(s.Kind, s.Name, s.Most + 1), $"{s}"));
        Assert.False(Stands(MissKind.GroupKg, "h", 600));
        Assert.False(Stands(MissKind.MaterialKg, "b", 600));
        Assert.False(Stands(MissKind.Stock, "a", 600));
        Assert.False(Misses.Stands(new(MissKind.MaterialKg, "a", IsMax: false, 700, 600), melt));

        bool Stands(MissKind kind, string name, double value) => Misses.Stands(new(kind, name, IsMax: true, 500, value), melt);
    }

    [Fact]
    public void Correction_ThatAddsOrTapsTooMuch_IsToldBoth()
    {
        var bath = Metallurgy.Chain.Metal.Of(3000, Analysis.Of((Element.C, 3.6)));
        var melt = new Melt
        {
            Start = bath, Columns = [MeltColumn.Of(A), MeltColumn.TapOff(bath, 500, costPerTonne: 20)], Limits = [], LeastLiquidKg = 2600, MostLiquidKg = 3000, MostWeighedKg = 100, ScaleKg = 3000,
        };

        Assert.Empty(Misses.Of(new(melt, [100, 500])));
        Assert.Equal([new(MissKind.WeighedKg, "", true, 100, 101), new(MissKind.MaterialKg, "tap off", true, 500, 501)], Misses.Of(new(melt, [101, 501])));
        Assert.Equal([new(MissKind.LiquidKg, "", false, 2600, 2499), new(MissKind.MaterialKg, "tap off", true, 500, 501)], Misses.Of(new(melt, [0, 501])));
    }

    [Theory]
    [InlineData("c", 1)]
    [InlineData("a", -1)]
    [InlineData("a", double.NaN)]
    [InlineData("a", double.PositiveInfinity)]
    public void Mass_OfNoMaterialOrNoMass_IsRefused(string code, double kg) =>
        Assert.Contains(code, Assert.Throws<ArgumentException>(() => ChargeCheck.Of(Kept, new Dictionary<string, double> { [code] = kg })).Message, StringComparison.Ordinal);

    [Fact]
    public void Plan_ThatMissesSomethingOrCostsOtherwise_IsAFault()
    {
        var melt = ChargeOptimiser.MeltOf(Kept);
        var (kept, missed) = (new MeltResult(melt, [600, 400]), new MeltResult(melt, [600, 300]));

        MeltCheck.Require(kept);
        Assert.Contains("LiquidKg", Assert.Throws<InvalidOperationException>(() => MeltCheck.Require(missed)).Message, StringComparison.Ordinal);
        MeltCheck.RequireCost(kept, 340 + 3e-4, 1); // a millionth of 340 is 0.00034
        MeltCheck.RequireCost(kept, 340 - 3e-4, 1);
        MeltCheck.RequireCost(kept, 340 + 1.2e-3, 1e6); // and a thousand-millionth of what the program's 1 costs
        Assert.Throws<InvalidOperationException>(() => MeltCheck.RequireCost(kept, 340 + 4e-4, 1));
        Assert.Throws<InvalidOperationException>(() => MeltCheck.RequireCost(kept, 340 - 4e-4, 1));
        var wished = new MeltResult(ChargeOptimiser.MeltOf(Of(A with { UseUpBonusPerTonne = 100 })), [600, 400]);
        MeltCheck.RequireCost(wished, wished.Costs.Weighed + 3.8e-4, 1); // 340 of prices and 60 of bonus are the measure
    }

    [Fact]
    public void Charge_OnAHeel_IsShownWithItsCostsGroupsAndRooms()
    {
        var problem = Of(A with { BulkDensityTonnesPerM3 = 0.5 }) with
        {
            MeltKg = 1500, Heel = Metallurgy.Chain.Metal.Of(500, Analysis.Of((Element.C, 3))), Volumes = [new("bucket", 2)],
            Groups = [new() { Name = "g", Codes = ["b"] }],
        };
        var check = ChargeCheck.Of(problem, Kilograms(600, 400));

        Assert.Equal((1500.0, 340.0, 340.0), (Math.Round(check.LiquidKg, 9), Math.Round(check.Costs.Total, 9), Math.Round(check.CostPerTonne, 9))); // for the new metal alone
        Assert.Equal([new("a", 600, 60), new("b", 400, 40)], check.Lines);
        Assert.Equal(new GroupOutcome("g", 400, 40), Assert.Single(check.Groups));
        var room = Assert.Single(check.Volumes);
        Assert.Equal(("bucket", 1.2, 2.0), (room.Name, Math.Round(room.M3, 9), room.MostM3));
        Assert.Equal(["b"], room.NotCounted);
        Assert.Equal([Element.Si], check.AssumedZero);
        Assert.Empty(ChargeCheck.Of(problem, Kilograms(600, 0)).Volumes.Single().NotCounted); // what is not charged needs no room
    }

    private static ChargeProblem Of(ChargeMaterial a) => Kept with { Materials = [a, Kept.Materials[1]] };

    private static ChargeProblem Of(GroupLimit group) => Kept with { Groups = [group] };

    private static Dictionary<string, double> Kilograms(double a, double b) => new() { ["a"] = a, ["b"] = b };
}

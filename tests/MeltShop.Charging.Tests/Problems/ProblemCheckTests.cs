using MeltShop.Charging.Problems;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Problems;

/// <summary>What makes no sense is refused by its name, and what is only at its edge is not.</summary>
public class ProblemCheckTests
{
    private static readonly ChargeProblem Whole = new()
    {
        MeltKg = 1000, Materials = [Material("a", 300), Material("b", 400)], Limits = [Limit(Metallurgy.Elements.Element.Si, 0, 3)],
        Groups = [new() { Name = "both", Codes = ["a", "b"] }], Volumes = [new("bucket", 5)], WeighedKg = new Dictionary<string, double> { ["a"] = 10 },
    };

    public static TheoryData<string, ChargeProblem> AtTheEdge => new()
    {
        { "as it is", Whole },
        { "nothing weighed yet", Whole with { WeighedKg = new Dictionary<string, double> { ["a"] = 0 } } },
        { "one mass only", Of(Whole.Groups[0] with { MinKg = 500, MaxKg = 500 }) },
        { "one share only", Of(Whole.Groups[0] with { MinPercent = 100, MaxPercent = 100 }) },
        { "nearness for nothing", Of(Whole.Limits[0] with { Nearness = new(2, 0) }) },
    };

    public static TheoryData<string, Func<double, ChargeProblem>> NoLessThanZero => new()
    {
        { "weighed a", n => Whole with { WeighedKg = new Dictionary<string, double> { ["a"] = n } } },
        { "cost of slag", n => Whole with { SlagCostPerTonne = n } },
        { "price of energy", n => Whole with { EnergyPricePerKWh = n } },
        { "slag of a", n => Of(Whole.Materials[0] with { SlagPercent = n }) },
        { "melting energy of a", n => Of(Whole.Materials[0] with { MeltingKWhPerTonne = n }) },
        { "bonus of a", n => Of(Whole.Materials[0] with { UseUpBonusPerTonne = n }) },
        { "least mass of both", n => Of(Whole.Groups[0] with { MinKg = n }) },
        { "least share of both", n => Of(Whole.Groups[0] with { MinPercent = n }) },
        { "price of nearness to the aim of Si", n => Of(Whole.Limits[0] with { Nearness = new(2, n) }) },
    };

    public static TheoryData<string, Func<double, ChargeProblem>> AboveZero => new()
    {
        { "capacity of the furnace", n => Whole with { CapacityKg = n } },
        { "least mass worth weighing of a", n => Of(Whole.Materials[0] with { LeastIfUsedKg = n }) },
        { "bulk density of a", n => Of(Whole.Materials[0] with { BulkDensityTonnesPerM3 = n }) },
        { "room of bucket", n => Whole with { Volumes = [new("bucket", n)] } },
        { "harm of Si", n => Of(Whole.Limits[0] with { HarmWeight = n }) },
    };

    [Theory]
    [MemberData(nameof(AtTheEdge))]
    public void Problem_AtTheEdge_IsTaken(string edge, ChargeProblem problem) => Assert.True(Record.Exception(() => ProblemCheck.Require(problem)) is null, edge);

    [Theory]
    [MemberData(nameof(NoLessThanZero))]
    public void Number_BelowZeroOrNotFinite_IsRefusedByName(string name, Func<double, ChargeProblem> with)
    {
        ProblemCheck.Require(with(0));
        foreach (var number in new[] { -1e-9, double.NaN, double.PositiveInfinity })
            Assert.Contains($"The {name} is ", Assert.Throws<ArgumentException>(() => ProblemCheck.Require(with(number))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(AboveZero))]
    public void Number_ThatHasToBeAboveZero_IsRefusedAtZeroToo(string name, Func<double, ChargeProblem> with)
    {
        ProblemCheck.Require(with(1e-9));
        foreach (var number in new[] { 0, -1, double.NaN, double.PositiveInfinity })
            Assert.Contains($"The {name} is ", Assert.Throws<ArgumentException>(() => ProblemCheck.Require(with(number))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Code_ThatTheProblemDoesNotHold_IsNamed()
    {
        var weighed = Whole with { WeighedKg = new Dictionary<string, double> { ["a"] = 1, ["c"] = 1 } };

        Assert.Contains("called c", Assert.Throws<ArgumentException>(() => ProblemCheck.Require(weighed)).Message, StringComparison.Ordinal);
        Assert.Contains("called d", Assert.Throws<ArgumentException>(() => ProblemCheck.Require(Of(Whole.Groups[0] with { Codes = ["a", "d"] }))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Problem_ThatIsNotThere_IsRefusedAsSuch() => Assert.Throws<ArgumentNullException>(() => ProblemCheck.Require(null!));

    [Fact]
    public void Bounds_OfAGroupThatAreCrossed_AreRefused()
    {
        foreach (var group in new[] { Whole.Groups[0] with { MinKg = 501, MaxKg = 500 }, Whole.Groups[0] with { MinPercent = 51, MaxPercent = 50 } })
            Assert.Contains("bounds of both", Assert.Throws<ArgumentException>(() => ProblemCheck.Require(Of(group))).Message, StringComparison.Ordinal);
    }

    private static ChargeProblem Of(ChargeMaterial material) => Whole with { Materials = [material, Whole.Materials[1]] };

    private static ChargeProblem Of(GroupLimit group) => Whole with { Groups = [group] };

    private static ChargeProblem Of(QuantityLimit limit) => Whole with { Limits = [limit] };
}

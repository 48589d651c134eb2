using MeltShop.Charging.Formulation;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Solving;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Formulation;

/// <summary>What each miss counts, by pencil: 1 is one percent of the melt of 1000 kg, so 10 kg; a holds 1 % of Si, b 2 %.</summary>
public class ElasticProgramTests
{
    private static readonly ChargeProblem Window = new()
    {
        MeltKg = 1000, Materials = [Material("a", 300, (Element.Si, 1)), Material("b", 400, (Element.Si, 2), (Element.P, 0.02))], Limits = [Limit(Element.Si, 1.5, 1.7)],
    };

    private static ChargeMaterial A => Window.Materials[0];

    public static TheoryData<string, ChargeProblem, double, double, double> Missed => new()
    {
        { "nothing", Window, 400, 600, 0 },
        { "10 kg of liquid short", Window, 400, 590, 1 },
        { "10 kg of liquid over", Window, 400, 610, 1 },
        { "Si half its window low", Window, 600, 400, 1 },
        { "Si half its window high", Window, 200, 800, 1 },
        { "Si that matters three times as much", Window with { Limits = [Window.Limits[0] with { HarmWeight = 3 }] }, 600, 400, 3 },
        { "a single bound by two of its tenths", Window with { Limits = [Limit(Element.Si, 1.5, null)] }, 800, 200, 2 },
        { "a bound of zero, whose tenth is nothing, by 0.01", Window with { Limits = [Limit(Element.P, null, 0)] }, 500, 500, 1 },
        { "five points too much of a share", Of(A with { MaxPercent = 40 }), 450, 550, 1 },
        { "five points too little of a group's share", Of(new GroupLimit { Name = "g", Codes = ["b"], MinPercent = 60 }), 450, 550, 1 },
        { "10 kg of a group", Of(new GroupLimit { Name = "g", Codes = ["a"], MaxKg = 390 }), 400, 600, 1 },
        { "a hundredth of the room", Of(A with { BulkDensityTonnesPerM3 = 0.5 }) with { Volumes = [new("bucket", 0.8)] }, 404, 596, 1 },
        { "10 kg that are compulsory", Of(A with { MinKg = 410 }), 400, 600, 1 },
        { "10 kg that are compulsory beside what is in", Of(A with { MinKg = 410 }) with { WeighedKg = Weighed(100, 300) }, 400, 600, 1 },
        { "two pieces of 50 kg", Of(A with { MinKg = 500, PieceKg = 50 }), 400, 600, 10 },
        { "what the furnace holds and the melt does not", Window with { CapacityKg = 1050 }, 400, 650, 5 },
        { "what is in and more than the furnace holds", Window with { CapacityKg = 800, WeighedKg = Weighed(400, 600) }, 400, 600, 0 },
        { "on a heel of 100 kg", OnHeel, 360, 590, 5 },
    };

    public static TheoryData<string, ChargeProblem, double, double> Impossible => new()
    {
        { "taken out again", Window with { WeighedKg = Weighed(410, 0) }, 400, 600 },
        { "taken out again of what has to be more", Of(A with { MinKg = 450 }) with { WeighedKg = Weighed(410, 0) }, 400, 600 },
        { "taken out again of the other", Of(A with { MinKg = 450 }) with { WeighedKg = Weighed(0, 610) }, 400, 600 },
        { "beyond the stock", Of(A with { AvailableKg = 390 }), 400, 600 },
        { "beyond the furnace", Window with { CapacityKg = 1050 }, 400, 660 },
        { "beyond the furnace that is over full", Window with { CapacityKg = 800, WeighedKg = Weighed(400, 600) }, 400, 610 },
        { "beyond the furnace with its heel", OnHeel, 360, 600 },
    };

    private static ChargeProblem OnHeel => Window with { Heel = Metal.Of(100, Analysis.Of((Element.Si, 1.6))), CapacityKg = 1050 };

    [Theory]
    [MemberData(nameof(Missed))]
    public void Miss_CountsAgainstOnePercentOfTheMelt(string what, ChargeProblem problem, double a, double b, double harm) =>
        Assert.True(Math.Abs(harm - Harm(problem, a, b) ?? double.NaN) <= 1e-6, $"{what}: {Harm(problem, a, b)} and not {harm}");

    [Theory]
    [MemberData(nameof(Impossible))]
    public void Charge_ThatCannotBe_HasNoHarm(string what, ChargeProblem problem, double a, double b) => Assert.True(Harm(problem, a, b) is null, what);

    [Fact]
    public void Miss_OfWhatNobodyAskedForOrOfWholePieces_HasNoPrice()
    {
        var problem = Of(A with { PieceKg = 100 }) with { WeighedKg = Weighed(130, 0) }; // 130 kg and whole pieces more
        var program = ElasticProgram.Of(new(ChargeOptimiser.MeltOf(problem)));

        Assert.Equal(["too little: liquid", "too much: liquid", "too little: limit 1, Si min", "too much: limit 1, Si max"], program.Columns.Where(c => c.Cost > 0).Select(c => c.Name));
        Assert.Equal(["a", "b", "further pieces: a"], program.Columns.Where(c => c.Cost == 0).Select(c => c.Name));
        Assert.Equal(["liquid", "pieces: a", "limit 1, Si min", "limit 1, Si max"], program.Rows.Select(r => r.Name));
    }

    /// <summary>The harm of one charge; null where it cannot be.</summary>
    private static double? Harm(ChargeProblem problem, params double[] kilograms)
    {
        var melt = ChargeOptimiser.MeltOf(problem);
        var program = ElasticProgram.Of(new(melt));
        var fixedTo = program with { Columns = [.. program.Columns.Select((c, j) => j < kilograms.Length ? Fixed(c, kilograms[j] / melt.UnitKg(melt.Columns[j])) : c)] };
        var solution = ProgramSolver.Solve(fixedTo, new(TimeSpan.FromMinutes(5), TestContext.Current.CancellationToken));
        return solution.IsOptimal ? program.Cost(solution.Values) : null;
    }

    private static Column Fixed(Column column, double value) => column with { Least = Math.Max(column.Least, value), Most = Math.Min(column.Most, value), Whole = false };

    private static ChargeProblem Of(ChargeMaterial a) => Window with { Materials = [a, Window.Materials[1]] };

    private static ChargeProblem Of(GroupLimit group) => Window with { Groups = [group] };

    private static Dictionary<string, double> Weighed(double a, double b) => new() { ["a"] = a, ["b"] = b };
}

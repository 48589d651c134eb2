using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Planning;

/// <summary>What stock, masses, shares and rooms cost in a melt of 1000 kg of two irons at 100 and 300 a tonne, all of which melt in: by hand.</summary>
public class BoundsTests
{
    private static readonly ChargeMaterial Cheap = Material("cheap", 100) with { BulkDensityTonnesPerM3 = 0.5 };
    private static readonly ChargeMaterial Dear = Material("dear", 300) with { BulkDensityTonnesPerM3 = 2 };

    [Fact]
    public void Stock_ThatIsUsedUp_IsWorthTheDifferenceOfThePrices()
    {
        var plan = Plan([Cheap with { AvailableKg = 400 }, Dear]);

        Is(plan, MissKind.Stock, "cheap", BindingBound.Max, 400, -0.2, 0.2);
        Is(plan, MissKind.LiquidKg, "", BindingBound.Both, 1000, 0.3, -0.3);
        Assert.Equal(2, plan.Bounds.Count);
    }

    [Fact]
    public void Bounds_OfManyKinds_AreToldTheWholeFirstThenMaterialsThenWhatIsBoundedTogether()
    {
        var plan = Plan([Cheap with { AvailableKg = 400 }, Dear with { MaxKg = 500 }, Material("third", 900)], new GroupLimit { Name = "returns", Codes = ["third"], MinKg = 100 });

        Assert.Equal([MissKind.LiquidKg, MissKind.MaterialKg, MissKind.Stock, MissKind.GroupKg], plan.Bounds.Select(bound => bound.Kind));
    }

    [Fact]
    public void Masses_OfAMaterial_CostTheDifferenceOfThePrices()
    {
        Is(Plan([Cheap with { MaxKg = 400 }, Dear]), MissKind.MaterialKg, "cheap", BindingBound.Max, 400, -0.2, 0.2);
        Is(Plan([Cheap, Dear with { MinKg = 100 }]), MissKind.MaterialKg, "dear", BindingBound.Min, 100, 0.2, -0.2);
        Is(Plan([Cheap with { MinKg = 400, MaxKg = 400 }, Dear]), MissKind.MaterialKg, "cheap", BindingBound.Both, 400, -0.2, 0.2);
    }

    [Fact]
    public void Shares_OfAMaterial_CostTenKilogramsAPoint()
    {
        Is(Plan([Cheap with { MaxPercent = 40 }, Dear]), MissKind.MaterialPercent, "cheap", BindingBound.Max, 40, -2, 2);
        Is(Plan([Cheap, Dear with { MinPercent = 10 }]), MissKind.MaterialPercent, "dear", BindingBound.Min, 10, 2, -2);
        Is(Plan([Cheap with { MinPercent = 40, MaxPercent = 40 }, Dear]), MissKind.MaterialPercent, "cheap", BindingBound.Both, 40, -2, 2);
    }

    [Fact]
    public void Groups_ThatBind_CostAsTheirMaterialsDo()
    {
        GroupLimit cheap = new() { Name = "returns", Codes = ["cheap"] }, dear = new() { Name = "pig", Codes = ["dear"] };

        Is(Plan([Cheap, Dear], cheap with { MaxKg = 400 }), MissKind.GroupKg, "returns", BindingBound.Max, 400, -0.2, 0.2);
        Is(Plan([Cheap, Dear], dear with { MinKg = 100 }), MissKind.GroupKg, "pig", BindingBound.Min, 100, 0.2, -0.2);
        Is(Plan([Cheap, Dear], cheap with { MaxPercent = 40 }), MissKind.GroupPercent, "returns", BindingBound.Max, 40, -2, 2);
        Is(Plan([Cheap, Dear], dear with { MinPercent = 10 }), MissKind.GroupPercent, "pig", BindingBound.Min, 10, 2, -2);
    }

    [Fact]
    public void Room_ThatIsFull_IsWorthTheLooseIronThatWouldFitIn()
    {
        // 2 m³/t and 0.5 m³/t: a cubic metre more takes 1/1.5 t of the loose iron in the place of as much dense iron.
        var problem = Problem([Cheap, Dear]) with { Volumes = [new("bucket", 1.2)] };

        Is(ChargeOptimiser.Explained(problem, TestContext.Current.CancellationToken), MissKind.Volume, "bucket", BindingBound.Max, 1.2, -200 / 1.5, 200 / 1.5);
    }

    [Fact]
    public void TwoReasons_ThatHoldAtOnce_SaveNothingEachByItselfAndCostBoth()
    {
        var plan = Plan([Cheap with { AvailableKg = 400, MaxKg = 400, MaxPercent = 40 }, Dear]);

        Is(plan, MissKind.Stock, "cheap", BindingBound.Max, 400, 0, 0.2);
        Is(plan, MissKind.MaterialKg, "cheap", BindingBound.Max, 400, 0, 0.2);
        Is(plan, MissKind.MaterialPercent, "cheap", BindingBound.Max, 40, 0, 2);
    }

    [Fact]
    public void Stock_ThatIsJustWhatIsCompulsory_CannotBeLowered()
    {
        var plan = Plan([Cheap, Dear with { AvailableKg = 100, MinKg = 100 }]);

        Is(plan, MissKind.Stock, "dear", BindingBound.Max, 100, 0, null);
        Is(plan, MissKind.MaterialKg, "dear", BindingBound.Min, 100, null, -0.2);
    }

    [Fact]
    public void Mass_ThatIsFixedAtAllOfTheStock_CanOnlyBeLowered()
    {
        Is(Plan([Cheap with { AvailableKg = 400, MinKg = 400, MaxKg = 400 }, Dear]), MissKind.MaterialKg, "cheap", BindingBound.Both, 400, null, 0.2);
    }

    [Fact]
    public void Plan_ThatIsNotExplained_SaysNothingOfItsBounds()
    {
        var problem = Problem([Material("cheap", 100, (Element.C, 1)) with { AvailableKg = 900 }, Dear]) with { Limits = [Limit(Element.C, null, 0.6)] };
        var plan = ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);

        Assert.Empty(plan.Bounds);
        Assert.Null(plan.Limits[0].LoweredCost);
        Assert.Equal(-2, plan.Limits[0].MarginalCost!.Value, 1e-9);
        Assert.Equal([MissKind.LiquidKg], ChargeOptimiser.Explained(problem, TestContext.Current.CancellationToken).Bounds.Select(bound => bound.Kind)); // 600 of 900 kg
    }

    [Fact]
    public void Limit_WhoseBoundIsReachedByChance_CostsMoreThanItSaves()
    {
        // 600 kg of cheap iron with 1 % bring the 0.6 % that are asked; its stock is 600 kg too: more cannot be had, and less is saved by nobody.
        ChargeMaterial cheap = Material("cheap", 100, (Element.C, 1)) with { AvailableKg = 600 };
        var plan = ChargeOptimiser.Explained(Problem([cheap, Dear]) with { Limits = [Limit(Element.C, 0.6, null)] }, TestContext.Current.CancellationToken);

        var limit = Assert.Single(plan.Limits);
        Assert.Equal(BindingBound.Min, limit.Binding);
        Assert.Null(limit.MarginalCost);
        Assert.Equal(0, limit.LoweredCost!.Value, 1e-9);
        Is(plan, MissKind.Stock, "cheap", BindingBound.Max, 600, -0.2, null);
    }

    [Fact]
    public void Limit_OfAnUpperBound_LoweredCostsWhatRaisedSaves()
    {
        ChargeMaterial cheap = Material("cheap", 100, (Element.C, 1));
        var plan = ChargeOptimiser.Explained(Problem([cheap, Dear]) with { Limits = [Limit(Element.C, null, 0.6)] }, TestContext.Current.CancellationToken);

        Assert.Equal(-2, plan.Limits[0].MarginalCost!.Value, 1e-9);
        Assert.Equal(2, plan.Limits[0].LoweredCost!.Value, 1e-9);
    }

    [Fact]
    public void WeighedIn_OverWhatWasAsked_StandsAndCostsNothing()
    {
        var problem = Problem([Cheap with { AvailableKg = 400 }, Dear with { MinKg = 50, MaxKg = 100 }], new GroupLimit { Name = "pig", Codes = ["dear"], MaxKg = 150 })
            with { WeighedKg = new Dictionary<string, double> { ["cheap"] = 500, ["dear"] = 200 }, Volumes = [new("bucket", 0.9)], MeltToleranceKg = 1000 };

        // Nothing is still to come but what is missing to 1000 kg, and nothing may come: all that was bounded is full and over.
        Assert.Equal(PlanStatus.Infeasible, ChargeOptimiser.Explained(problem, TestContext.Current.CancellationToken).Status);
        var plan = ChargeOptimiser.Explained(problem with { MeltKg = 700 }, TestContext.Current.CancellationToken);
        Assert.Equal([MissKind.LiquidKg], plan.Bounds.Select(bound => bound.Kind));
    }

    [Fact]
    public void Pieces_LeaveNoDerivative()
    {
        Assert.Empty(Plan([Cheap with { PieceKg = 100, AvailableKg = 400 }, Dear]).Bounds);
    }

    private static ChargeProblem Problem(IReadOnlyList<ChargeMaterial> materials, params GroupLimit[] groups) => new() { MeltKg = 1000, Materials = materials, Limits = [], Groups = groups };

    private static ChargePlan Plan(IReadOnlyList<ChargeMaterial> materials, params GroupLimit[] groups) =>
        ChargeOptimiser.Explained(Problem(materials, groups), TestContext.Current.CancellationToken);

    private static void Is(ChargePlan plan, MissKind kind, string name, BindingBound binding, double at, double? raised, double? lowered)
    {
        var bound = Assert.Single(plan.Bounds, b => b.Kind == kind && b.Name == name);
        Assert.Equal((binding, at), (bound.Binding, bound.Bound));
        Near(raised, bound.RaisedCost);
        Near(lowered, bound.LoweredCost);
    }

    private static void Near(double? expected, double? actual)
    {
        if (expected is { } number) Assert.Equal(number, actual!.Value, 1e-6);
        else Assert.Null(actual);
    }
}

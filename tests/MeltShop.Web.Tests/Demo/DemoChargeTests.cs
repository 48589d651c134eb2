using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Records.Yard;
using MeltShop.Web.Demo;

namespace MeltShop.Web.Tests.Demo;

/// <summary>Every demo grade can be made from the demo yard, and one charge cannot: both are part of the demo.</summary>
public class DemoChargeTests
{
    private static readonly DemoCatalogue Catalogue = DemoCatalogue.Load();

    public static TheoryData<string> Codes => [.. Catalogue.Grades.Select(g => g.Code)];

    [Theory, MemberData(nameof(Codes))]
    public void Plan_GradeFromTheDemoYard_EndsInsideTheFurnaceWindowByItsMargins(string code)
    {
        var grade = Catalogue.Grade(code);

        var plan = Plan(DemoCharge.Of(Catalogue, grade));

        Assert.Equal(PlanStatus.Optimal, plan.Status);
        var melted = plan.Lines.Aggregate(
            Metal.Of(600, DemoIron.AtAims(grade)), (metal, line) => metal.Plus(Arrival.PerKilogram(Catalogue.Material(line.Code).Composition), line.Kg));
        Assert.Equal(6000, melted.Kg, 0.001);
        Assert.All(grade.Furnace, row => Assert.InRange(
            DemoIron.Quantity(row).Value(melted.Analysis), (row.Least ?? 0) + (row.Least is null ? 0 : row.Margin) - 1e-6, (row.Most ?? 100) - row.Margin + 1e-6));
    }

    [Theory, MemberData(nameof(Codes))]
    public void Plan_GradeFromTheDemoYard_IsAChargeThatAMelterWouldRecognise(string code)
    {
        var plan = Plan(DemoCharge.Of(Catalogue, Catalogue.Grade(code)));
        double Share(params MaterialKind[] kinds) => plan.Lines.Where(l => kinds.Contains(Catalogue.Material(l.Code).Kind)).Sum(l => l.Percent);

        Assert.InRange(Share(MaterialKind.Returns), 15, 65);
        Assert.InRange(Share(MaterialKind.SteelScrap), 10, 65);
        Assert.InRange(Share(MaterialKind.Carburiser), 0.1, 3);
        Assert.InRange(plan.CostPerTonne, 300, 500);
    }

    [Fact]
    public void Plan_FerriticGradeFromShreddedScrapOnly_IsImpossibleAndNamesATrampElement()
    {
        var problem = DemoCharge.Of(
            Catalogue, Catalogue.Grade("EN-GJS-400-15"), m => m.Code is "steel-e40-shredded" or "ferrosilicon-75" || m.Kind == MaterialKind.Carburiser);

        var plan = Plan(problem);

        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        Assert.Empty(plan.Lines);
        Assert.Contains(plan.Conflicts, c => c is { Quantity: "Cu" or "Sn" or "Cr", Bound: "max" } && c.Nearest > c.Limit);
    }

    /// <summary>So sure of every limit nobody can be with scrap that scatters: the planes about its cones creep, and still the answer is a set of which none can be spared.</summary>
    [Fact]
    public void Plan_GradeSureInAllButTwoOfTenThousand_NamesLimitsOfWhichNoneCanBeSpared()
    {
        var problem = DemoCharge.Of(Catalogue, Catalogue.Grade("EN-GJS-400-15")) with { ConfidencePercent = 99.98 };

        var plan = Plan(problem);

        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        Assert.False(plan.MayConflictsBeFewer);
        Assert.InRange(plan.Conflicts.Count, 2, 8);
        Assert.All(plan.Conflicts, c => Assert.NotNull(c.Nearest));
        Assert.All(plan.Conflicts, spared => Assert.Equal(PlanStatus.Optimal, Plan(problem with { Limits = [.. plan.Conflicts.Where(c => c != spared).Select(c => Bound(problem, c))] }).Status));
    }

    [Fact]
    public void Plan_PriceOfTheMainSteelDoubled_TakesLessOfItAndCostsMore()
    {
        var problem = DemoCharge.Of(Catalogue, Catalogue.Grade("EN-GJS-500-7"));
        var before = Plan(problem);
        var steel = before.Lines.Where(l => Catalogue.Material(l.Code).Kind == MaterialKind.SteelScrap).MaxBy(l => l.Kg)!;

        var after = Plan(problem with
        {
            Materials = [.. problem.Materials.Select(m => m.Code == steel.Code ? m with { PricePerTonne = 2 * m.PricePerTonne } : m)],
        });

        Assert.True((after.Lines.SingleOrDefault(l => l.Code == steel.Code)?.Kg ?? 0) < steel.Kg);
        Assert.True(after.TotalCost > before.TotalCost);
    }

    private static ChargePlan Plan(ChargeProblem problem) => ChargeOptimiser.Plan(problem, TestContext.Current.CancellationToken);

    private static QuantityLimit Bound(ChargeProblem problem, Conflict conflict)
    {
        var limit = problem.Limits.Single(l => l.Quantity.Name == conflict.Quantity);
        return conflict.Bound == "min" ? limit with { Max = null } : limit with { Min = null };
    }
}

using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Operations.Tests.Charging;

/// <summary>Windows of derived quantities as limits of a charge: linear ones as they are, the others by rows that say the same.</summary>
public sealed class DerivedLimitTests(OneShop one) : IClassFixture<OneShop>, IAsyncLifetime
{
    private readonly Shop shop = one.Shop;
    private ChargeView data = null!;
    private ChargeChoice choice = null!;

    public async ValueTask InitializeAsync()
    {
        data = await shop.Get<ChargePage>().Load();
        choice = new ChargeChoice(shop.FurnaceId, shop.DuctileId, 2000, HeelKg: 0);
    }

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    [Theory]
    [InlineData("CE", 0.03)]
    [InlineData("CEL", 0.03)]
    [InlineData("Sc", 0.01)]
    public void Furnace_LeastOverWhatTheCheapestChargeHas_IsReachedAndNoMore(string name, double more)
    {
        var quantity = WindowQuantity.Find(name)!;
        var free = quantity.Value(Plan(data).Analysis);
        var asked = Plan(With(new WindowView(WindowStage.Furnace, name, free + more, null, null, more / 2)));

        Assert.Equal(free + (more * 1.5), quantity.Value(asked.Analysis), 6); // by its margin
        Assert.Equal(free + (more * 1.5), Assert.Single(asked.Told(), limit => limit.Quantity == name).Value, 6);
    }

    [Theory]
    [InlineData("manganeseBalance", 0.02)]
    [InlineData("liquidusC", 3)]
    public void Furnace_MostUnderWhatTheCheapestChargeHas_IsReachedAndNoMore(string name, double less)
    {
        var quantity = WindowQuantity.Find(name)!;
        var free = quantity.Value(Plan(data).Analysis);

        Assert.Equal(free - less, quantity.Value(Plan(With(new WindowView(WindowStage.Furnace, name, null, null, free - less, 0))).Analysis), 6);
    }

    [Fact]
    public void Furnace_SaturationBetweenTwoBounds_IsOneLimitOfThePlan()
    {
        var free = WindowQuantity.Find("Sc")!.Value(Plan(data).Analysis);
        var told = Assert.Single(Plan(With(new WindowView(WindowStage.Furnace, "Sc", free - 0.02, null, free + 0.02, 0))).Told(), limit => limit.Quantity == "Sc");

        Assert.Equal((free - 0.02, free + 0.02), (told.Min!.Value, told.Max!.Value));
        Assert.Equal(free, told.Value, 9);
    }

    [Fact]
    public void Furnace_SaturationOfAnotherLeastForThisCharge_IsReckonedFromThatOne()
    {
        var free = WindowQuantity.Find("Sc")!.Value(Plan(data).Analysis);
        var limited = With(new WindowView(WindowStage.Furnace, "Sc", free - 0.05, null, null, 0));

        var asked = Plan(limited, choice with { Limits = [new("Sc", Least: free + 0.01)] });
        Assert.Equal(free + 0.01, WindowQuantity.Find("Sc")!.Value(asked.Analysis), 6);
        Assert.Equal(
            [("limits.Sc.least", "bound.outOfRange")],
            ChargeQuestion.Build(limited, choice with { Limits = [new("Sc", Least: 7)] }).Findings.Select(finding => (finding.Path, finding.Code)).Distinct());
    }

    [Fact]
    public void Quantity_ThatOnlyThisChargeLimits_IsLimited()
    {
        var free = WindowQuantity.Find("Sc")!.Value(Plan(data).Analysis);

        Assert.Equal(free + 0.01, WindowQuantity.Find("Sc")!.Value(Plan(data, choice with { Limits = [new("Sc", Least: free + 0.01)] }).Analysis), 6);
    }

    [Fact]
    public void Derived_OfAGradeAndATarget_AreThoseThatMeanSomethingThere()
    {
        var (ductile, grey) = (data.Grades.Single(grade => grade.Id == shop.DuctileId), data.Grades.Single(grade => grade.Id == shop.GreyId));
        static string Names(GradeView grade, ChargeTarget target) => string.Join(' ', AddedLimits.Derived(grade, target).Select(quantity => quantity.Name));

        Assert.Equal("CE CEL liquidusC alloyedLiquidusC Sc manganeseBalance freeNitrogen", Names(ductile, ChargeTarget.Furnace));
        Assert.Equal("CE CEL liquidusC alloyedLiquidusC Sc manganeseBalance pearliteFactor ferritePercent traceFactor freeNitrogen", Names(ductile, ChargeTarget.Poured));
        Assert.Equal("CE CEL liquidusC alloyedLiquidusC Sc manganeseBalance freeNitrogen normalStrengthMPa", Names(grey, ChargeTarget.Poured));
    }

    [Theory]
    [InlineData("ferritePercent", ChargeTarget.Furnace, "quantity.pouredOnly")]
    [InlineData("normalStrengthMPa", ChargeTarget.Poured, "quantity.untreatedOnly")]
    public void Added_WhereItMeansNothing_IsRefusedAtItsField(string name, ChargeTarget target, string code)
    {
        var (problem, findings) = ChargeQuestion.Build(data, choice with { Target = target, LadleId = shop.LadleId, Limits = [new("S", Most: 0.015), new(name, Least: 300)] });

        Assert.Null(problem);
        Assert.Contains(($"limits.{name}.most", code), findings.Select(finding => (finding.Path, finding.Code)));
    }

    [Theory]
    [InlineData("ferritePercent", 1.02, true)]
    [InlineData("pearliteFactor", 0.98, false)]
    public void Added_ToThePouredIron_BindsTheCastingAndNotTheFurnace(string name, double tighter, bool isLeast)
    {
        var poured = choice with { Target = ChargeTarget.Poured, LadleId = shop.LadleId };
        LimitChoice Limit(double bound) => isLeast ? new(name, Least: bound) : new(name, Most: bound);
        LimitOutcome Told(double bound) => Assert.Single(Plan(data, poured with { Limits = [new("S", Most: 0.015), Limit(bound)] }).Told(), limit => limit.Quantity == name);
        var free = Told(isLeast ? 0.001 : 900).Value;

        // A grade that says the same in its poured window gets the same charge.
        var bound = isLeast ? Math.Min(99, free * tighter) : free * tighter;
        var asked = Told(bound);
        double? most = isLeast ? null : bound;
        var same = Assert.Single(
            Plan(With(new WindowView(WindowStage.Poured, name, isLeast ? bound : null, null, most, 0)), poured with { Limits = [new("S", Most: 0.015)] }).Told(), limit => limit.Quantity == name);
        Assert.Equal((same.Min, same.Max), (asked.Min, asked.Max));
        Assert.Equal(same.Value, asked.Value, 6);
    }

    /// <summary>More ferrite in the casting takes less manganese in the furnace: less steel, more pig iron.</summary>
    [Fact]
    public void Poured_LeastFerrite_IsKeptByTheChargeOfTheFurnace()
    {
        var poured = choice with { Target = ChargeTarget.Poured, LadleId = shop.LadleId, Limits = [new("S", Most: 0.015)] };
        var asked = With(new WindowView(WindowStage.Poured, "ferritePercent", 0.001, null, null, 0));
        var free = Assert.Single(Plan(asked, poured).Told(), limit => limit.Quantity == "ferritePercent").Value;
        var least = Math.Min(99, free * 1.02);

        var told = Assert.Single(Plan(With(new WindowView(WindowStage.Poured, "ferritePercent", least, null, null, 0)), poured).Told(), limit => limit.Quantity == "ferritePercent");
        Assert.Equal(least, told.Min!.Value, 6);
        Assert.InRange(told.Value, least - 1e-4, 100);
    }

    private ChargeView With(WindowView window) => data with
    {
        Grades = [.. data.Grades.Select(grade => grade.Id == shop.DuctileId ? grade with { Windows = [.. grade.Windows, window] } : grade)],
    };

    private ChargePlan Plan(ChargeView view, ChargeChoice? asked = null)
    {
        var (problem, findings) = ChargeQuestion.Build(view, asked ?? choice);
        Assert.Empty(findings);
        var plan = ChargeOptimiser.Plan(problem!, TestContext.Current.CancellationToken);
        Assert.Equal(PlanStatus.Optimal, plan.Status);
        return plan;
    }
}

using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Tests.Charging;

/// <summary>Kinds, rooms, wishes, the poured iron and charges made by hand. 2000 kg of the shop's ductile iron.</summary>
public sealed class ChargeWishesTests(OneShop one) : IClassFixture<OneShop>, IAsyncLifetime
{
    private readonly Shop shop = one.Shop;
    private ChargeView data = null!;
    private ChargeChoice choice = null!;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        data = await shop.Get<ChargePage>().Load();
        choice = new ChargeChoice(shop.FurnaceId, shop.DuctileId, 2000, HeelKg: 0);
    }

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    [Fact]
    public void Group_WithALeastShare_ReachesIt()
    {
        var free = Plan(choice);
        var bound = Plan(choice with { Groups = [new(nameof(MaterialKind.PigIron), MinPercent: 60)] });

        Assert.True(Share(free, "pig") < 60 - 1e-6, $"{Share(free, "pig")} % without the bound");
        Assert.Equal(60, Share(bound, "pig"), 6);
    }

    [Fact]
    public void Group_Galvanised_HoldsWhatCarriesTheCaution()
    {
        var zinc = data with { Materials = [.. data.Materials.Select(m => m.Code == "steel" ? m with { Cautions = ["galvanised"] } : m)] };

        var (problem, _) = ChargeQuestion.Build(zinc, choice with { Groups = [new(ChargeGroups.Galvanised, MaxKg: 400)] });
        Assert.Equal(["steel"], Assert.Single(problem!.Groups).Codes);
        Assert.Equal(400, Kg(ChargeOptimiser.Plan(problem, Soon), "steel"), 6);
    }

    [Fact]
    public void Room_OfTheBucket_CountsItsFillings()
    {
        var dense = data with { Materials = [.. data.Materials.Select(m => m with { BulkDensityTonnesPerM3 = m.Code == "steel" ? 1 : 4 })] };
        var (problem, _) = ChargeQuestion.Build(dense, choice with { Wishes = new(BucketM3: 0.5, BucketFillings: 2) });
        var check = ChargeCheck.Of(problem!, ChargeOptimiser.Plan(problem!, Soon).Lines.ToDictionary(line => line.Code, line => line.Kg));

        Assert.Equal(1, Assert.Single(check.Volumes).MostM3);
        Assert.True(check.Holds);
    }

    [Fact]
    public void Slag_Priced_IsWhatTheYieldLeavesOver()
    {
        var plan = Plan(choice with { Wishes = new(SlagCostPerTonne: 50) });

        Assert.Equal(50 * ((0.02 * Kg(plan, "pig")) + (0.03 * Kg(plan, "steel"))) / 1000, plan.Costs.Slag, 6);
    }

    [Fact]
    public void Energy_Priced_CountsEveryKilogramOfColdCharge()
    {
        var plan = Plan(choice with { Wishes = new(EnergyPricePerKWh: 0.2, MeltingKWhPerTonne: 550) });

        Assert.Equal(0.2 * 0.55 * plan.Lines.Sum(line => line.Kg), plan.Costs.Energy, 6);
    }

    [Fact]
    public async Task Rule_OfTheShop_CountsWhereAPlanSaysNothing()
    {
        await Shop.Do(shop.Get<SetChargeRule>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, new(SlagCostPerTonne: 50, EnergyPricePerKWh: 0.2, MeltingKWhPerTonne: 550)));
        var ruled = await shop.Get<ChargePage>().Load(Soon);

        var problem = ChargeQuestion.Build(ruled, choice with { Wishes = new(SlagCostPerTonne: 80) }).Problem!;
        Assert.Equal((80, 0.2), (problem.SlagCostPerTonne, problem.EnergyPricePerKWh));
        Assert.All(problem.Materials, material => Assert.Equal(550, material.MeltingKWhPerTonne));
    }

    [Theory]
    [InlineData("melter", "", "right.missing")]
    [InlineData("half", "wishes.meltingKWhPerTonne", "number.missing")]
    [InlineData("negative", "wishes.slagCostPerTonne", "number.negative")]
    public async Task Rule_Wrong_IsRefused(string what, string path, string code) => await shop.Refuses(
        shop.Get<SetChargeRule>(), what == "melter" ? shop.Melter : shop.Metallurgist,
        new(Guid.NewGuid(), shop.Now, what == "half" ? new(EnergyPricePerKWh: 0.2) : new(SlagCostPerTonne: -1)), path, code);

    [Fact]
    public void Nearness_DearEnough_BringsThePlanToTheAim()
    {
        Assert.NotEqual(1.5, Value(Plan(choice), "Si"), 3);
        Assert.Equal(1.5, Value(Plan(choice with { Wishes = new(NearnessPrice: 10_000) }), "Si"), 6);
    }

    [Fact]
    public void Bonus_ForReturns_IsGivenToReturnsAlone()
    {
        var kinds = data with { Materials = [.. data.Materials.Select(m => m.Code == "pig" ? m with { Kind = MaterialKind.Returns } : m)] };
        var (problem, _) = ChargeQuestion.Build(kinds, choice with { Wishes = new(UseUpBonusPerTonne: 30) });

        Assert.Equal(["pig"], problem!.Materials.Where(m => m.UseUpBonusPerTonne == 30).Select(m => m.Code));
    }

    [Fact]
    public void Poured_GreyIron_HasItsSiliconLessWhatTheInoculantBrings()
    {
        // 0.2 % of an inoculant with 72 % silicon: poured Si = (furnace Si + 0.144) / 1.002, so that 1.7 % poured are 1.5594 % in the furnace.
        var grey = choice with { GradeId = shop.GreyId, Target = ChargeTarget.Poured };

        var silicon = ChargeQuestion.Rows(data, grey).Single(row => row.Name == "Si");
        Assert.Equal((1.7 * 1.002) - 0.144, silicon.Bounds.Least!.Value, 9);
        Assert.True(silicon.IsPoured);
        Assert.Equal(1.5594, Plan(grey).Limits.Single(limit => limit.Quantity == "Si").Min!.Value, 6);
    }

    [Fact]
    public void Poured_DuctileIron_KeepsWhatOnlyTheFurnaceWindowLimitsAndPlansTheSulphur()
    {
        var poured = choice with { Target = ChargeTarget.Poured, LadleId = shop.LadleId, Limits = [new("S", Most: 0.015)] };

        var rows = ChargeQuestion.Rows(data, poured);
        Assert.Equal(["C", "Si", "S", "Mn"], rows.Select(row => row.Name));
        Assert.Equal([true, true, true, false], rows.Select(row => row.IsPoured));
        // Alloy and inoculant bring about 0.3 % and more than half a percent of silicon.
        Assert.InRange(rows[1].Bounds.Least!.Value, 1.0, 1.5);
        Assert.True(Value(Plan(poured), "S") <= 0.015 + 1e-6);
    }

    /// <summary>The pocket is dosed on the sulphur of the coin: so much less alloy brings so much less silicon, and the plan puts it into the furnace.</summary>
    [Fact]
    public void Poured_DuctileIron_IsInsideWithTheAlloyOfItsOwnSulphur()
    {
        var grade = data.Grades.Single(g => g.Id == shop.DuctileId);
        var narrow = data with { Grades = [grade with { Windows = [.. grade.Windows.Where(w => w is not { Stage: WindowStage.Poured, Quantity: "Si" }), new WindowView(WindowStage.Poured, "Si", 2.4, null, null, 0)] }] };
        var poured = choice with { Target = ChargeTarget.Poured, LadleId = shop.LadleId, Limits = [new("S", Most: 0.03)] };
        var plan = ChargeOptimiser.Plan(ChargeQuestion.Build(narrow, poured).Problem!, Soon);

        var sulphur = plan.Analysis.OrZero(Element.S);
        Assert.InRange(sulphur, 0.008, 0.025);
        // Turned back for just that sulphur, the window says the same: nothing rests on the alloy of a sulphur that is not there.
        var exact = ChargeQuestion.Rows(narrow, poured with { Limits = [new("S", Most: sulphur)] }).Single(row => row.Name == "Si");
        Assert.Equal(exact.Bounds.Least!.Value, plan.Analysis.OrZero(Element.Si), 3);
        var told = plan.Told().Single(limit => limit.Quantity == "Si");
        Assert.Equal(plan.Analysis.OrZero(Element.Si), told.Value, 9);
        Assert.Equal(exact.Bounds.Least.Value, told.Min!.Value, 3);
        // A bound that a person set is of the percent itself.
        var own = ChargeQuestion.Build(narrow, poured with { Limits = [new("S", Most: 0.03), new("Si", Least: 1.9)] }).Problem!;
        Assert.Equal(1.9, ChargeOptimiser.Plan(own, Soon).Analysis.OrZero(Element.Si), 6);
    }

    /// <summary>
    /// By hand: 2 % of a cover with 0.1 % C and just the sulphur of the iron. A kilogram from the furnace and 0.02 kg of it have to be what a kilogram from the furnace was
    /// without it: 1.02·C − 0.02·0.1.
    /// </summary>
    [Fact]
    public void Poured_UnderCoverSteelOfTheRecipe_AsksForTheCarbonThatItTakes()
    {
        var grade = data.Grades.Single(g => g.Id == shop.DuctileId);
        var steel = data.Materials.Single(m => m.Code == "steel");
        var cover = steel with
        {
            Code = "punchings", Kind = MaterialKind.Cover, MetallicYieldPercent = 100,
            Analysis = steel.Analysis! with { Percents = [new(Element.C, 0.1, null, null), new(Element.S, 0.015, null, null)] },
        };
        var covered = data with
        {
            Grades = [grade with { Recipe = grade.Recipe! with { CoverCode = "punchings", CoverRatePercent = 2 } }], RouteMaterials = [.. data.RouteMaterials, cover],
        };
        var poured = choice with { Target = ChargeTarget.Poured, LadleId = shop.LadleId, Limits = [new("S", Most: 0.015)] };

        var bare = ChargeQuestion.Rows(data, poured).Single(row => row.Name == "C").Bounds.Aim!.Value;
        var carbon = ChargeQuestion.Rows(covered, poured).Single(row => row.Name == "C").Bounds.Aim!.Value;
        Assert.Equal((1.02 * bare) - 0.002, carbon, 9);
        Assert.InRange(carbon - bare, 0.070, 0.074);
        // What the yard does not have has no analysis: it is said, and not left out.
        Assert.Equal("recipe.noCover", Assert.Single(ChargeQuestion.Build(covered with { RouteMaterials = data.RouteMaterials }, poured).Findings).Code);
    }

    [Fact]
    public void Returns_WithMagnesiumAndNoRecoveryForIt_AreLeftOutAndRefusedWhereTheyAreAskedFor()
    {
        var gap = Magnesium(recovery: null);

        Assert.DoesNotContain(ChargeQuestion.Build(gap, choice).Problem!.Materials, m => m.Code == "steel");
        Assert.Contains(ChargeQuestion.Build(Magnesium(recovery: 0), choice).Problem!.Materials, m => m.Code == "steel");
        var finding = Assert.Single(ChargeQuestion.Build(gap, choice with { Materials = [new("steel", MinKg: 1)] }).Findings);
        Assert.Equal(("materials.steel", "material.noMgRecovery"), (finding.Path, finding.Code));
    }

    [Fact]
    public void ByHand_OfSomethingWithoutAnAnalysis_IsRefused()
    {
        var unknown = data with { Materials = [.. data.Materials.Select(m => m.Code == "steel" ? m with { Analysis = null } : m)] };

        var finding = Assert.Single(ChargeQuestion.Build(unknown, choice with { ByHand = [new("steel", 5)] }).Findings);
        Assert.Equal(("byHand.steel", "material.noAnalysis"), (finding.Path, finding.Code));
        Assert.Empty(ChargeQuestion.Build(unknown, choice with { ByHand = [new("steel", 0)] }).Findings);
    }

    [Fact]
    public async Task ByHand_Kept_IsTheChargeThatWasMadeAndSaysSoWhenOpenedAgain()
    {
        ChosenMass[] made = [new("pig", 1500), new("steel", 500)];
        var kept = await Shop.Do(shop.Get<PlanCharge>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, choice with { ByHand = made }));
        var again = PlanAgain.Of((await shop.Get<ChargePage>().Plan(kept.Value.PlanId, Soon))!, Soon);

        Assert.True(again.IsSame);
        Assert.Equal([1500, 500], again.Kept.Lines.Select(line => line.Kg));
        Assert.NotEmpty(again.ByHand!.Checked.Misses);
    }

    [Fact]
    public async Task ByHand_ThatHolds_IsKeptForAMelterToo()
    {
        var plan = Plan(choice);
        var made = plan.Lines.Select(line => new ChosenMass(line.Code, line.Kg));

        await Shop.Do(shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, choice with { ByHand = [.. made] }));
    }

    private ChargeView Magnesium(double? recovery) => data with
    {
        Materials =
        [
            .. data.Materials.Select(m => m.Code != "steel" ? m : m with
            {
                Analysis = m.Analysis! with { Percents = [.. m.Analysis.Percents, new MaterialPercentView(Element.Mg, 0.04, null, recovery)] },
            }),
        ],
    };

    private ChargePlan Plan(ChargeChoice with)
    {
        var (problem, findings) = ChargeQuestion.Build(data, with);
        Assert.Empty(findings);
        return ChargeOptimiser.Plan(problem!, Soon);
    }

    private static double Kg(ChargePlan plan, string code) => plan.Lines.FirstOrDefault(line => line.Code == code)?.Kg ?? 0;

    private static double Share(ChargePlan plan, string code) => plan.Lines.FirstOrDefault(line => line.Code == code)?.Percent ?? 0;

    private static double Value(ChargePlan plan, string quantity) => plan.Limits.Single(limit => limit.Quantity == quantity).Value;
}

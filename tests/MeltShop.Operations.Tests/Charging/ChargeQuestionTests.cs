using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Storing;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records.Reading.Charge;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Charging;

public sealed class ChargeQuestionTests(OneShop one) : IClassFixture<OneShop>, IAsyncLifetime
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

    public static TheoryData<string, string, string> Refused => new()
    {
        { "melt", "meltKg", "mass.negative" },
        { "meltNaN", "meltKg", "number.notANumber" },
        { "capacity", "meltKg", "furnace.capacity" },
        { "heel", "heelKg", "heel.overMelt" },
        { "room", "meltToleranceKg", "furnace.noRoom" },
        { "leftOut", "materials.pig.minKg", "material.leftOut" },
        { "leftOutShare", "materials.pig.minPercent", "material.leftOut" },
        { "leastShare", "materials.pig.minPercent", "percent.over100" },
        { "leastOverMost", "materials.pig.minPercent", "bounds.crossed" },
        { "leastShares", "materials.steel.minPercent", "shares.over100" },
        { "tolerance", "meltToleranceKg", "mass.negative" },
        { "confidence", "confidencePercent", "confidence.outOfRange" },
        { "furnace", "furnaceId", "furnace.unknown" },
        { "grade", "gradeId", "grade.unknown" },
        { "material", "materials.slag", "material.unknown" },
        { "materialTwice", "materials.pig", "material.twice" },
        { "bounds", "materials.pig.minKg", "bounds.crossed" },
        { "share", "materials.pig.maxPercent", "percent.over100" },
        { "limit", "limits.C.least", "window.crossed" },
        { "limitTwice", "limits.C", "quantity.twice" },
        { "groupTwice", "groups.PigIron", "group.twice" },
        { "quantity", "limits.Xx", "quantity.unknown" },
        { "nothing", "materials", "yard.empty" },
        { "heelOverFurnace", "heelKg", "heel.overCapacity" },
        { "stock", "materials.pig.minKg", "stock.under" },
        { "shares", "materials.pig.maxPercent", "shares.under100" },
        { "group", "groups.Gold", "group.unknown" },
        { "groupBounds", "groups.PigIron.minKg", "bounds.crossed" },
        { "groupShares", "groups.PigIron.minPercent", "bounds.crossed" },
        { "groupSum", "groups.SteelScrap.minPercent", "shares.over100" },
        { "groupEmpty", "groups.Returns.minKg", "group.empty" },
        { "energy", "wishes.meltingKWhPerTonne", "number.missing" },
        { "nearness", "wishes.nearnessPrice", "number.negative" },
        { "bucket", "wishes.bucketM3", "number.missing" },
        { "coldRoom", "wishes.furnaceM3", "number.notPositive" },
        { "byHand", "byHand.slag", "material.unknown" },
        { "byHandTwice", "byHand.pig", "material.twice" },
        { "byHandKg", "byHand.pig", "mass.negative" },
        { "byHandMisses", "byHand", "plan.misses" },
        { "poured", "target", "recipe.noSulphur" },
        { "pouredLadle", "ladleId", "choice.missing" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public async Task PlanCharge_WrongChoice_IsRefusedAtItsField(string what, string path, string code) =>
        await shop.Refuses(shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, Wrong(what)), path, code);

    [Fact]
    public async Task PlanCharge_ImpossibleLimit_NamesItAndKeepsNoPlan()
    {
        var impossible = choice with { Limits = [new("Mn", 5, 6)] };

        var findings = await shop.Refuses(
            shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, impossible), "limits.Mn", "plan.infeasible");

        Assert.Equal(["Mn", "min", 5.0], findings.Single(f => f.Path == "limits.Mn").Arguments);
    }

    [Fact]
    public void Build_AsTheGradeHasIt_EndsInsideTheFurnaceWindowByTheMargin()
    {
        var plan = Plan(choice);

        var silicon = plan.Limits.Single(l => l.Quantity == "Si");
        Assert.InRange(silicon.Value, 1.3 + 0.02 - 1e-9, 1.8 - 0.02 + 1e-9);
        Assert.Equal(2000, plan.LiquidKg, 6);
    }

    [Fact]
    public void Build_OtherPriceOrLimit_MovesThePlan()
    {
        var plan = Plan(choice);

        Assert.True(Plan(choice with { Materials = [new("steel", PricePerTonne: 900)] }).TotalCost > plan.TotalCost);
        Assert.Equal(3.7 + 0.02, Plan(choice with { Limits = [new("C", 3.7)] }).Limits.Single(l => l.Quantity == "C").Value, 6);
        Assert.DoesNotContain(Plan(choice with { Materials = [new("carbon", Include: false)] }).Lines, l => l.Code == "carbon");
    }

    [Fact]
    public void Build_MoreThatJustFillsTheFurnace_IsAllowed() =>
        Assert.Equal(10, ChargeQuestion.Build(data, choice with { MeltKg = 2990, MeltToleranceKg = 10 }).Problem!.MeltToleranceKg);

    [Fact]
    public void Build_LeastShareOfAMaterial_IsKept()
    {
        var free = Plan(choice).Lines.Single(l => l.Code == "pig").Percent;

        Assert.Equal(free + 1, Plan(choice with { Materials = [new("pig", MinPercent: free + 1)] }).Lines.Single(l => l.Code == "pig").Percent, 1e-6);
    }

    [Fact]
    public async Task LastWeighed_OfAGrade_IsWhatWasWeighedForItsLastWholeCharge()
    {
        await using var db = shop.Db();
        var weighed = await db.Weighings.Where(w => w.HeatId == one.Bath.Id).ToListAsync(Soon);
        var pig = Assert.Single(weighed, w => w.MaterialId == shop.PigIronId);
        await Shop.Do(shop.Get<CorrectWeighing>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, pig.Id, one.Bath.Id, shop.PigIronId, pig.Kg + 7, IntoBath: false, "misread"));

        var last = await shop.Get<ChargePage>().LastWeighed(shop.DuctileId, Soon);

        Assert.Equal(pig.Kg + 7, last["pig"], 1e-9);
        Assert.Equal(weighed.Count, last.Count);
        Assert.Empty(await shop.Get<ChargePage>().LastWeighed(shop.GreyId, Soon));
    }

    [Fact]
    public void Build_MassAskedForOfAnEmptyStock_IsRefusedAtItsField()
    {
        var empty = data with { Materials = [.. data.Materials.Select(m => m.Code == "steel" ? m with { StockKg = 0 } : m)] };

        var finding = Assert.Single(ChargeQuestion.Build(empty, choice with { Materials = [new("steel", MinKg: 100)] }).Findings);

        Assert.Equal(("materials.steel.minKg", "stock.under"), (finding.Path, finding.Code));
        Assert.Equal([0.0], finding.Arguments);
        Assert.Empty(ChargeQuestion.Build(empty, choice with { Materials = [new("steel", MinKg: 0)] }).Findings);
    }

    [Theory]
    [InlineData("material.noAnalysis")]
    [InlineData("material.noYield")]
    public void Build_MaterialWithoutAnAnalysisOrAYield_IsLeftOutAndRefusedWhereItIsAskedFor(string code)
    {
        var unknown = data with
        {
            Materials = [.. data.Materials.Select(m => m.Code != "steel" ? m : code == "material.noYield" ? m with { MetallicYieldPercent = null } : m with { Analysis = null })],
        };

        var (problem, findings) = ChargeQuestion.Build(unknown, choice);
        Assert.Empty(findings);
        Assert.DoesNotContain(problem!.Materials, m => m.Code == "steel"); // it would count as pure iron
        Assert.Contains(ChargeQuestion.Build(data, choice).Problem!.Materials, m => m.Code == "steel");

        foreach (var asked in new MaterialChoice[] { new("steel", Include: true), new("steel", MinKg: 100) })
        {
            var finding = Assert.Single(ChargeQuestion.Build(unknown, choice with { Materials = [asked] }).Findings);
            Assert.Equal(("materials.steel", code), (finding.Path, finding.Code));
        }

        var byHand = ChargeQuestion.Build(unknown, choice with { ByHand = [new("steel", 100)] }).Findings;
        Assert.Equal(("byHand.steel", code), (Assert.Single(byHand).Path, byHand[0].Code));
    }

    [Fact]
    public async Task PlanCharge_Stored_GivesTheSameNumbersWhenSolvedAgain()
    {
        var result = await Shop.Do(shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, choice));

        await using var db = shop.Db();
        var stored = await db.Plans.SingleAsync(p => p.Id == result.Value.PlanId, Soon);
        var answer = StoredJson.Value<ChargePlan>(stored.Answer);
        var again = ChargeOptimiser.Plan(StoredJson.Value<ChargeProblem>(stored.Problem), Soon);
        Assert.Equal(answer.Lines, again.Lines);
        Assert.Equal(answer.TotalCost, again.TotalCost);
        Assert.Equal(answer.Analysis, again.Analysis);
        Assert.Equal((double)stored.TotalCost, answer.TotalCost, 0.0051);
    }

    private ChargePlan Plan(ChargeChoice with)
    {
        var (problem, findings) = ChargeQuestion.Build(data, with);
        Assert.Empty(findings);
        return ChargeOptimiser.Plan(problem!, Soon);
    }

    private ChargeChoice Wrong(string what) => what switch
    {
        "melt" => choice with { MeltKg = -1 },
        "meltNaN" => choice with { MeltKg = double.NaN },
        "capacity" => choice with { MeltKg = 3001 },
        "heel" => choice with { HeelKg = 2001 },
        "room" => choice with { MeltKg = 2990, MeltToleranceKg = 10.1 },
        "leftOutShare" => choice with { Materials = [new("pig", Include: false, MinPercent: 10)] },
        "leastShare" => choice with { Materials = [new("pig", MinPercent: 101)] },
        "leastOverMost" => choice with { Materials = [new("pig", MinPercent: 20, MaxPercent: 10)] },
        "leastShares" => choice with { Materials = [new("pig", MinPercent: 60), new("steel", MinPercent: 50)] },
        "leftOut" => choice with { Materials = [new("pig", Include: false, MinKg: 100)] },
        "tolerance" => choice with { MeltToleranceKg = -1 },
        "confidence" => choice with { ConfidencePercent = 100 },
        "furnace" => choice with { FurnaceId = 99 },
        "grade" => choice with { GradeId = 99 },
        "material" => choice with { Materials = [new("slag")] },
        "materialTwice" => choice with { Materials = [new("pig"), new("pig")] },
        "bounds" => choice with { Materials = [new("pig", MinKg: 100, MaxKg: 50)] },
        "share" => choice with { Materials = [new("pig", MaxPercent: 101)] },
        "limit" => choice with { Limits = [new("C", 4, 3)] },
        "limitTwice" => choice with { Limits = [new("C", 3.5), new("C", Most: 3.7)] },
        "groupTwice" => choice with { Groups = [new("PigIron", MinKg: 1), new("PigIron", MaxKg: 500)] },
        "quantity" => choice with { Limits = [new("Xx", 1, 2)] },
        "heelOverFurnace" => choice with { HeelKg = 3001 },
        "stock" => choice with { Materials = [new("pig", MinKg: 5001)] },
        "shares" => choice with { Materials = [.. data.Materials.Select(m => new MaterialChoice(m.Code, MaxPercent: 20))] },
        "group" => choice with { Groups = [new("Gold", MaxKg: 1)] },
        "groupBounds" => choice with { Groups = [new("PigIron", MinKg: 2, MaxKg: 1)] },
        "groupShares" => choice with { Groups = [new("PigIron", MinPercent: 20, MaxPercent: 10)] },
        "groupSum" => choice with { Groups = [new("PigIron", MinPercent: 60), new("SteelScrap", MinPercent: 50)] },
        "groupEmpty" => choice with { Groups = [new("Returns", MinKg: 100)] },
        "energy" => choice with { Wishes = new(EnergyPricePerKWh: 0.2) },
        "nearness" => choice with { Wishes = new(NearnessPrice: -1) },
        "bucket" => choice with { Wishes = new(BucketFillings: 2) },
        "coldRoom" => choice with { Wishes = new(FurnaceM3: 0) },
        "byHand" => choice with { ByHand = [new("slag", 1)] },
        "byHandTwice" => choice with { ByHand = [new("pig", 1), new("pig", 1)] },
        "byHandKg" => choice with { ByHand = [new("pig", -1)] },
        "byHandMisses" => choice with { ByHand = [new("pig", 2000)] },
        "poured" => choice with { Target = ChargeTarget.Poured, LadleId = shop.LadleId },
        "pouredLadle" => choice with { Target = ChargeTarget.Poured, Limits = [new("S", Most: 0.015)] },
        _ => choice with { Materials = [.. data.Materials.Select(m => new MaterialChoice(m.Code, Include: false))] },
    };
}

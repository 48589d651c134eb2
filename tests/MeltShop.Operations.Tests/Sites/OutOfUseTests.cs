using MeltShop.Operations.Charging;
using MeltShop.Operations.Grades;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Orders;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Sites;

/// <summary>A grade, a ladle or a material that is used no longer is offered nowhere and still stands where it was used.</summary>
public sealed class OutOfUseTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Material_OutOfUse_IsNotPlannedFromAndIsTakenBack(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        var (used, code) = await Used(shop, heat.PlanId);
        var findings = await shop.Refuses(shop.Get<UseMaterial>(), shop.Metallurgist, await Material(shop, used, false), "isActive", "material.inUse");
        Assert.Equal([heat.Number], findings[0].Arguments);
        await shop.Refuses(shop.Get<UseMaterial>(), shop.Melter, await Material(shop, used, false), "", "right.missing");

        var bath = await shop.Sample(heat, Records.Laboratory.SampleKind.Bath, ("C", 3.6), ("Si", 1.5));
        Assert.True(bath > 0);
        await Shop.Do(shop.Get<Operations.Heats.CancelHeat>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, heat.Id, (await shop.Heat(heat.Id)).Version, "no power"));
        Assert.True((await Shop.Do(shop.Get<UseMaterial>(), shop.Metallurgist, await Material(shop, used, false))).Succeeded);
        Assert.DoesNotContain((await shop.Get<ChargePage>().Load(Soon)).Materials, m => m.Id == used);
        Assert.Contains(code, (await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Plan.Answer, StringComparison.Ordinal);
        Assert.True((await Shop.Do(shop.Get<UseMaterial>(), shop.Metallurgist, await Material(shop, used, true))).Succeeded);
        Assert.Contains((await shop.Get<ChargePage>().Load(Soon)).Materials, m => m.Id == used);
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Ladle_OutOfUse_IsPreparedNoMoreUntilItIsTakenBack(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var prepared = await shop.Prepared(heat);
        await shop.Refuses(shop.Get<UseLadle>(), shop.Metallurgist, await Ladle(shop, false), "isActive", "ladle.inUse");
        await shop.Refuses(shop.Get<UseMaterial>(), shop.Metallurgist, await Material(shop, shop.AlloyId, false), "isActive", "material.inUse");
        await Shop.Do(shop.Get<AbandonPocket>(), shop.Melter, new(Guid.NewGuid(), shop.Now, prepared.Id, prepared.Version, "hook broken"));

        Assert.True((await Shop.Do(shop.Get<UseLadle>(), shop.Metallurgist, await Ladle(shop, false))).Succeeded);
        await shop.Refuses(shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(heat, 900), "ladleId", "ladle.outOfUse");
        Assert.True((await Shop.Do(shop.Get<UseLadle>(), shop.Metallurgist, await Ladle(shop, true))).Succeeded);
        await Shop.Do(shop.Get<UseMaterial>(), shop.Metallurgist, await Material(shop, shop.InoculantId, false));
        await shop.Refuses(shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(heat, 900), "inoculantMaterialId", "material.outOfUse");
        await Shop.Do(shop.Get<UseMaterial>(), shop.Metallurgist, await Material(shop, shop.InoculantId, true));
        Assert.True((await shop.Prepared(heat)).Id > prepared.Id);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Grade_NamedAnewOrOutOfUse_IsRefusedWhileSomethingOpenUsesIt(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var plan = await Shop.Do(shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, new ChargeChoice(shop.FurnaceId, shop.DuctileId, 2000)));
        var heat = await shop.StartHeat();
        var operation = shop.Get<SetGrade>();
        await shop.Refuses(operation, shop.Metallurgist, await Grade(shop, c => c with { IsActive = false }), "isActive", "grade.inUse");
        await shop.Refuses(operation, shop.Metallurgist, await Grade(shop, c => c with { Family = IronFamily.Grey }), "family", "grade.made");
        await shop.Refuses(operation, shop.Metallurgist, await Grade(shop, c => c with { Code = "EN-GJL-250" }), "code", "code.taken");
        await shop.Refuses(operation, shop.Metallurgist, await Grade(shop, c => c with { Code = "" }), "code", "text.missing");
        await shop.Refuses(operation, shop.Metallurgist, await Grade(shop, c => c with { Version = Guid.NewGuid() }), "version", "version.stale");
        await shop.Refuses(operation, shop.Melter, await Grade(shop, c => c), "", "right.missing");

        Assert.True((await Shop.Do(operation, shop.Metallurgist, await Grade(shop, c => c with { Code = "EN-GJS-500-7C", Source = "typed again" }))).Succeeded);
        Assert.Equal("EN-GJS-500-7C", (await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Grade.Code);
        await Shop.Do(shop.Get<Operations.Heats.CancelHeat>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, heat.Id, (await shop.Heat(heat.Id)).Version, "no power"));
        var order = await Shop.Do(shop.Get<TakeOrder>(), shop.Supervisor, new(
            Guid.NewGuid(), shop.Now, new("4711", "Bracket", shop.DuctileId, 20, 60, 70, 10, new(2026, 4, 1))));
        Assert.True(order.Succeeded, string.Join(", ", order.Findings));
        await shop.Refuses(operation, shop.Metallurgist, await Grade(shop, c => c with { IsActive = false }), "isActive", "grade.ordered");
        await using (var db = shop.Db()) await db.CastingOrders.ExecuteUpdateAsync(o => o.SetProperty(x => x.State, Records.Orders.OrderState.Done), Soon);

        Assert.True((await Shop.Do(operation, shop.Metallurgist, await Grade(shop, c => c with { IsActive = false }))).Succeeded);
        await shop.Refuses(shop.Get<StartHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, plan.Value.PlanId), "planId", "grade.outOfUse");
        Assert.DoesNotContain((await shop.Get<ChargePage>().Load(Soon)).Grades, g => g.Id == shop.DuctileId);
        Assert.True((await Shop.Do(operation, shop.Metallurgist, await Grade(shop, c => c with { IsActive = true }))).Succeeded);
        Assert.True((await Shop.Do(shop.Get<StartHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, plan.Value.PlanId))).Succeeded);
    }

    [Fact]
    public async Task Family_OfAGradeThatNothingWasMadeBy_IsChangedUnlessItsTreatmentBelongsToTheOther()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);

        await shop.Refuses(shop.Get<SetGrade>(), shop.Metallurgist, await Grade(shop, c => c with { Family = IronFamily.Grey }), "family", "grade.recipeOfTheOther");
        var grey = (await Shop.Do(shop.Get<AddGrade>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, "new", IronFamily.Grey, "invented", [new(WindowStage.Poured, "Si", 2, 2.2, 2.5)], null))).Value;
        await using var db = shop.Db();
        var row = await db.Grades.AsNoTracking().SingleAsync(g => g.Id == grey, Soon);
        Assert.True((await Shop.Do(shop.Get<SetGrade>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, grey, row.Version, row.Code, IronFamily.Ductile, row.Source, true))).Succeeded);
        Assert.Equal(IronFamily.Ductile, (await db.Grades.AsNoTracking().SingleAsync(g => g.Id == grey, Soon)).Family);
    }

    private static async Task<(long Id, string Code)> Used(Shop shop, long planId)
    {
        await using var db = shop.Db();
        var answer = Storing.StoredJson.Value<MeltShop.Charging.Plans.ChargePlan>((await db.Plans.SingleAsync(p => p.Id == planId)).Answer);
        return (await db.Materials.Where(m => m.Code == answer.Lines[0].Code).Select(m => m.Id).SingleAsync(Soon), answer.Lines[0].Code);
    }

    private static async Task<UseMaterial.Command> Material(Shop shop, long id, bool isActive)
    {
        await using var db = shop.Db();
        return new(Guid.NewGuid(), shop.Now, id, (await db.Materials.SingleAsync(m => m.Id == id)).Version, isActive);
    }

    private static async Task<UseLadle.Command> Ladle(Shop shop, bool isActive)
    {
        await using var db = shop.Db();
        return new(Guid.NewGuid(), shop.Now, shop.LadleId, (await db.Ladles.SingleAsync(l => l.Id == shop.LadleId)).Version, isActive);
    }

    private static async Task<SetGrade.Command> Grade(Shop shop, Func<SetGrade.Command, SetGrade.Command> change)
    {
        await using var db = shop.Db();
        var grade = await db.Grades.SingleAsync(g => g.Id == shop.DuctileId);
        return change(new(Guid.NewGuid(), shop.Now, grade.Id, grade.Version, grade.Code, grade.Family, grade.Source, grade.IsActive));
    }
}

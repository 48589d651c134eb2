using MeltShop.Operations.Charging;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Importing;
using MeltShop.Operations.Tests.Importing.Corrupted;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Stories;

/// <summary>
/// What is written at a heat while it is ended or put into another furnace, on PostgreSQL, which lets both read before either has written. A gate holds
/// the furnaces, until both wait there: who came first goes first. Steel yields 97 %.
/// </summary>
public sealed class HeatsAtOnceTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Weighing_CorrectedWhileItsHeatIsEnded_CorrectsTheHeelThatItLeft()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var heat = await shop.Bath();
        var weighing = await shop.WeighIn(heat, shop.SteelId, 500, intoBath: true);
        heat = await shop.Heat(heat.Id);
        await using var db = shop.Db();
        await using var gate = await Gate(db, shop.FurnaceId);

        var close = shop.Get<CloseHeat>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, 0), Soon);
        await shop.Waiting(1);
        var right = shop.Get<CorrectWeighing>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, weighing, heat.Id, shop.SteelId, 300, true, "the other line"), Soon);
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        Assert.True((await close).Succeeded);
        Assert.True((await right).Succeeded);
        var heel = await db.InForce<Heel>().SingleAsync(h => h.FromHeatId == heat.Id, Soon);
        Assert.Equal("the other line", heel.Reason);
        Assert.Equal((await close).Value.HeelKg - 194, heel.Kg, 6);
        Assert.Equal(await shop.InFurnace(), heel.Kg, 6);
    }

    [Fact]
    public async Task Weighing_MovedToAHeatThatIsPutIntoAnotherFurnace_IsBookedThere()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var (second, third) = (await Furnace(shop, "F2"), await Furnace(shop, "F3"));
        var heat = await shop.StartHeat();
        var weighing = await shop.WeighIn(heat, shop.SteelId, 500);
        var other = await Started(shop, second);
        await shop.WeighIn(other, shop.SteelId, 1000);
        await using var db = shop.Db();
        await using var gate = await Gate(db, second);

        var move = Move(shop, other, third);
        await shop.Waiting(1);
        var right = shop.Get<CorrectWeighing>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, weighing, other.Id, shop.SteelId, 500, false, "the other heat"), Soon);
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        Assert.True((await move).Succeeded);
        Assert.True((await right).Succeeded);
        double[] liquidKg = [await shop.InFurnace(), await db.InFurnace(second, Soon), await db.InFurnace(third, Soon)];
        Assert.Equal([0, 0, 1455], liquidKg.Select(kg => Math.Round(kg, 6)));
    }

    [Fact]
    public async Task Entries_AtAHeatThatIsPutIntoAnotherFurnace_AreBookedThere()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var second = await Furnace(shop, "F2");
        var heat = await shop.Bath();
        await shop.Poured(heat, 500); // so that the tap does not change the heat's own row, whose version would tell
        var ladle = await shop.Prepared(heat, 300, await shop.SecondLadle());
        var rest = await shop.InFurnace();
        await using var db = shop.Db();
        await using var gate = await Gate(db, shop.FurnaceId);

        var move = Move(shop, await shop.Heat(heat.Id), second);
        await shop.Waiting(1);
        var tap = shop.Get<RecordTap>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, ladle.Id, ladle.Version, 300, null), Soon);
        await shop.Waiting(2);
        var weigh = shop.Get<WeighIn>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, shop.SteelId, 100, true), Soon);
        await shop.Waiting(3);
        await gate.RollbackAsync(Soon);

        Assert.True((await move).Succeeded);
        Assert.True((await tap).Succeeded);
        Assert.True((await weigh).Succeeded);
        Assert.Equal(0, await shop.InFurnace(), 6);
        Assert.Equal(rest - 300 + 97, await db.InFurnace(second, Soon), 6);
    }

    [Fact]
    public async Task BathSample_ImportedWhileItsHeatIsEnded_IsTheAnalysisOfTheHeel()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var (map, heat) = (await shop.ImportMap(), await shop.Bath());
        shop.Clock.Advance(5);
        var file = SampleFiles.Text($"7;{heat.Number};;second;K7;{shop.LocalTime()};1;3.41;1.52;0.30;;");
        shop.Clock.Advance(5);
        await using var db = shop.Db();
        await using var gate = await Gate(db, shop.FurnaceId);

        var close = shop.Get<CloseHeat>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, 0), Soon);
        await shop.Waiting(1);
        var import = shop.Import(map, file);
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        Assert.True((await close).Succeeded);
        Assert.Equal(1, (await import).Value.Samples);
        var heel = await db.InForce<Heel>().Include(h => h.Percents).SingleAsync(h => h.FromHeatId == heat.Id, Soon);
        Assert.Equal(3.41, heel.Percents.Single(p => p.Element == Metallurgy.Elements.Element.C).Percent, 9);
    }

    [Fact]
    public async Task BathSample_MovedToAHeatThatIsEnded_IsTheAnalysisOfItsHeel()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var second = await Furnace(shop, "F2");
        var heat = await shop.StartHeat();
        var other = await Started(shop, second);
        await shop.WeighIn(other, shop.SteelId, 1000);
        await shop.Sample(other, SampleKind.Bath, ("C", 3.65), ("Si", 1.5));
        var sample = await shop.Sample(heat, SampleKind.Bath, ("C", 3.41), ("Si", 1.6));
        other = await shop.Heat(other.Id);
        await using var db = shop.Db();
        await using var gate = await Gate(db, second);

        var close = shop.Get<CloseHeat>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, other.Id, other.Version, 0), Soon);
        await shop.Waiting(1);
        var right = shop.Get<CorrectSample>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, sample, other.Id, null, SampleKind.AfterCorrection, null, null, null, "coin of the other heat"), Soon);
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        Assert.True((await close).Succeeded);
        Assert.True((await right).Succeeded);
        var heel = await db.InForce<Heel>().Include(h => h.Percents).SingleAsync(h => h.FromHeatId == other.Id, Soon);
        Assert.Equal(3.41, heel.Percents.Single(p => p.Element == Metallurgy.Elements.Element.C).Percent, 9);
    }

    [Fact]
    public async Task Grade_OfOtherIronWhileALadleIsPrepared_IsRefused()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var heat = await shop.Bath();
        await using var db = shop.Db();
        await using var gate = await Gate(db, shop.FurnaceId);

        var prepare = shop.Get<PreparePocket>().Run(shop.Melter, shop.Pocket(heat, 500), Soon);
        await shop.Waiting(1);
        var right = shop.Get<CorrectHeat>().Run(shop.Metallurgist, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, shop.GreyId, null, "other button"), Soon);
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        Assert.True((await prepare).Succeeded);
        Assert.Equal(("gradeId", "grade.otherRoute"), (await right).Findings.Select(f => (f.Path, f.Code)).Single());
    }

    [Fact]
    public async Task Ladle_PreparedForTwoHeatsAtOnce_IsBusyForOne()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var second = await Furnace(shop, "F2");
        var heat = await shop.Bath();
        var other = await Started(shop, second);
        await shop.WeighIn(other, shop.SteelId, 1000);
        await shop.Sample(other, SampleKind.Bath, ("C", 3.65), ("Si", 1.5), ("Mn", 0.3), ("S", 0.012));
        await using var db = shop.Db();
        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""SELECT 1 FROM "Ladles" FOR UPDATE""", Soon);

        var both = new[] { heat, other }.Select(h => shop.Get<PreparePocket>().Run(shop.Melter, shop.Pocket(h, 500), Soon)).ToList();
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        var outcomes = await Task.WhenAll(both);
        Assert.Single(outcomes, o => o.Succeeded);
        Assert.Equal(("ladleId", "ladle.busy"), outcomes.Single(o => !o.Succeeded).Findings.Select(f => (f.Path, f.Code)).Single());
        Assert.Equal(1, await db.TreatedLadles.CountAsync(l => l.LadleId == shop.LadleId && l.State == TreatedLadleState.Prepared, Soon));
    }

    private static async Task<Microsoft.EntityFrameworkCore.Storage.IDbContextTransaction> Gate(RecordsContext db, long furnaceId)
    {
        var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""SELECT 1 FROM "Furnaces" WHERE "Id" = {furnaceId} FOR UPDATE""", Soon);
        return gate;
    }

    private static Task<Outcome<Guid>> Move(Shop shop, Heat heat, long furnaceId) => shop.Get<CorrectHeat>().Run(
        shop.Metallurgist, new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, heat.GradeId, null, "other button") { FurnaceId = furnaceId }, Soon);

    private static async Task<long> Furnace(Shop shop, string code) =>
        (await Shop.Do(shop.Get<AddFurnace>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, code, "Furnace " + code, 3000, 1800))).Value;

    private static async Task<Heat> Started(Shop shop, long furnaceId)
    {
        var plan = await Shop.Do(shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, new ChargeChoice(furnaceId, shop.DuctileId, 1500)));
        return await shop.Heat((await Shop.Do(shop.Get<StartHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, plan.Value.PlanId))).Value.HeatId);
    }
}

using MeltShop.Metallurgy;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Keeping;

/// <summary>What two people cannot both do.</summary>
public abstract class ConflictTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task TwoEditors_OfOneRow_TheSecondIsToldAndChangesNothing()
    {
        var foundry = await Foundry.Found(database);
        var seen = foundry.Steel.Version;

        var first = await ChangePrice(foundry, seen, 250m);
        var second = await ChangePrice(foundry, seen, 260m);
        var again = await ChangePrice(foundry, first.Value, 270m);

        Assert.Equal("version.stale", Assert.Single(second.Findings).Code);
        Assert.True(first.Succeeded && again.Succeeded);
        Assert.Equal(3, new[] { seen, first.Value, again.Value }.Distinct().Count());
        await using var db = database.Open();
        Assert.Equal(270m, await db.Materials.Where(m => m.Id == foundry.Steel.Id).Select(m => m.PricePerTonne).SingleAsync(Ct));
    }

    [Fact]
    public async Task TwoEditors_OfChildrenOnly_TheSecondIsTold()
    {
        var foundry = await Foundry.Found(database);
        var seen = foundry.Grade.Version;

        Assert.Empty((await AddWindow(foundry, seen, "C")).Findings);
        Assert.Equal("version.stale", Assert.Single((await AddWindow(foundry, seen, "Si")).Findings).Code);
        await using var db = database.Open();
        Assert.Equal("C", (await db.GradeWindows.SingleAsync(w => w.GradeId == foundry.Grade.Id, Ct)).Quantity);
    }

    [Fact]
    public async Task UniqueValue_TakenAlready_IsAFindingAtItsField()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat(HeatState.Bath);
        var weighing = 0L;
        await foundry.Write("WeighIn", (db, stamp) =>
        {
            var first = stamp.Weighing(heat.Id, foundry.Steel.Id, 10);
            db.Weighings.Add(first);
            db.SaveChanges();
            weighing = first.Id;
            db.Weighings.Add(stamp.Weighing(heat.Id, foundry.Steel.Id, 11, supersedes: weighing));
            db.TreatedLadles.Add(Ladle(foundry, heat));
        });

        Assert.Equal("code", await TakenBy(foundry, (db, _) => db.Furnaces.Add(new() { Code = foundry.Furnace.Code, Name = "", CapacityKg = 1, PowerKw = 1 })));
        Assert.Equal("code", await TakenBy(foundry, (db, _) => db.Grades.Add(new() { Code = foundry.Grade.Code, Family = IronFamily.Grey, Source = "" })));
        Assert.Equal("ordinal", await TakenBy(foundry, (db, _) => db.TreatedLadles.Add(Ladle(foundry, heat, TreatedLadleState.Held))));
        Assert.Equal("ladleId", await TakenBy(foundry, (db, _) => db.TreatedLadles.Add(Ladle(foundry, heat, ordinal: 2)))); // prepared already
        Assert.Equal("supersedesId", await TakenBy(foundry, (db, stamp) => db.Weighings.Add(stamp.Weighing(heat.Id, foundry.Steel.Id, 12, supersedes: weighing))));
        Assert.Equal("furnaceId", await TakenBy(foundry, (db, stamp) => db.Heats.Add(new() // the furnace holds a heat already
        {
            Number = heat.Number + "b", SiteId = foundry.Site.Id, FurnaceId = foundry.Furnace.Id, GradeId = foundry.Grade.Id, PlanId = heat.PlanId,
            State = HeatState.Charging, StartedAt = stamp.ObservedAt, HeelKg = 0,
        })));
        Assert.Equal("number", await TakenBy(foundry, (db, stamp) => db.Heats.Add(new()
        {
            Number = heat.Number, SiteId = foundry.Site.Id, FurnaceId = foundry.Furnace.Id, GradeId = foundry.Grade.Id, PlanId = heat.PlanId,
            State = HeatState.Closed, StartedAt = stamp.ObservedAt, HeelKg = 0,
        })));
    }

    [Fact]
    public async Task Row_ThatIsReferredTo_CannotBeDeleted()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Heat();

        await using var db = database.Open();
        await Assert.ThrowsAnyAsync<Exception>(() => db.Grades.Where(g => g.Id == foundry.Grade.Id).ExecuteDeleteAsync(Ct));
        await Assert.ThrowsAnyAsync<Exception>(() => db.Users.Where(p => p.Id == foundry.Person.Id).ExecuteDeleteAsync(Ct));
    }

    private async Task<string> TakenBy(Foundry foundry, Action<RecordsContext, Stamp> change)
    {
        var refused = await database.Recorder.Record(foundry.Entry("Test"), (db, stamp, _) =>
        {
            change(db, stamp);
            return Task.FromResult(Written<int>.Of(0));
        }, Ct);
        var finding = Assert.Single(refused.Findings);
        Assert.Equal(new Finding(finding.Path, "unique.taken").Code, finding.Code);
        return finding.Path;
    }

    private Task<Recorded<Guid>> ChangePrice(Foundry foundry, Guid seen, decimal price) =>
        database.Recorder.Record(foundry.Entry("ChangePrice"), async (db, _, ct) =>
        {
            var steel = await db.Materials.SingleAsync(m => m.Id == foundry.Steel.Id, ct);
            db.Expect(steel, seen);
            steel.PricePerTonne = price;
            await db.SaveChangesAsync(ct);
            return Written<Guid>.Of(steel.Version);
        }, Ct);

    private Task<Recorded<int>> AddWindow(Foundry foundry, Guid seen, string quantity) =>
        database.Recorder.Record(foundry.Entry("ChangeWindow"), async (db, _, ct) =>
        {
            var grade = await db.Grades.SingleAsync(g => g.Id == foundry.Grade.Id, ct);
            db.Expect(grade, seen);
            grade.Windows.Add(new() { Stage = WindowStage.Furnace, Quantity = quantity, Least = 1 });
            return Written<int>.Of(0);
        }, Ct);

    private static TreatedLadle Ladle(Foundry foundry, Heat heat, TreatedLadleState state = TreatedLadleState.Prepared, int ordinal = 1) =>
        new() { HeatId = heat.Id, LadleId = foundry.Ladle.Id, Ordinal = ordinal, State = state };
}

public sealed class ConflictTestsOnSqlite(SqliteDatabase database) : ConflictTests(database), IClassFixture<SqliteDatabase>;

public sealed class ConflictTestsOnPostgres(PostgresDatabase database) : ConflictTests(database), IClassFixture<PostgresDatabase>;

using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests;

/// <summary>The check of the trail reads every row again and compares each column with what was written: so does this test.</summary>
public abstract class EveryEntityTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Entity_EachOfTheRecords_ComesBackAsItWasWritten()
    {
        var foundry = await Foundry.Found(database);
        var story = await HeatStory.Tell(foundry, HeatState.Closed);
        await foundry.Write("Rest", (db, stamp) =>
        {
            db.FurnaceMetals.Add(stamp.Metal(foundry.Furnace.Id, FurnaceMetalKind.Tapped, -1.25));
            db.FurnaceMetals.Add(stamp.PouredBack(foundry.Furnace.Id, 20));
            db.HeatSteps.Add(stamp.Came(story.Heat.Id, HeatState.Closed));
            db.HeatCorrections.Add(stamp.Corrected(story.Heat));
            db.Add(stamp.ChargeRule());
            db.LadleSteps.Add(stamp.Came(story.Ladle.Id, Ladles.TreatedLadleState.Held));
            db.AddRange(stamp.OfTheLadle(story.Ladle.Id, foundry.Ladle.Id, foundry.Steel.Id));
            var piece = stamp.TestPiece(story.Ladle.Id);
            db.TestPieces.Add(piece);
            db.SaveChanges();
            db.TestResults.Add(stamp.Tested(piece.Id));
            db.Certificates.Add(stamp.Certificate(story.Ladle.Id));
            var (instrument, reference) = (Facts.Instrument($"{foundry.Grade.Code}-I"), Facts.Reference($"{foundry.Grade.Code}-R"));
            db.AddRange(instrument, reference);
            db.SaveChanges();
            db.AddRange(stamp.OfTheLaboratory(story.Heat.Id, instrument, reference));
            db.Heels.Add(stamp.Heel(foundry.Furnace.Id, story.Heat, 100.125, (Element.C, 3.5)));
            db.MaterialAnalyses.Add(stamp.Analysis(foundry.Steel.Id, (Element.C, 0.2, 0.01, 95)));
            db.Prices.Add(stamp.Price(foundry.Steel.Id, -0.01m));
            db.StockFacts.Add(stamp.Stock(foundry.Steel.Id, 1000.0625));
            db.LotPlaces.Add(stamp.Place(foundry.Steel.Id, "S 9", "Bay 4"));
            db.Materials.Where(m => m.Id == foundry.Steel.Id).ExecuteUpdate(m => m.SetProperty(x => x.StockKg, 1000.0625));
            db.Furnaces.Where(f => f.Id == foundry.Furnace.Id).ExecuteUpdate(f => f.SetProperty(x => x.LiquidKg, 18.75));
            db.BurnDecisions.Add(stamp.SetAside(story.Bath.Id, 2));
            db.Add(stamp.Correction(story.Heat.Id, story.Bath.Id));
            stamp.Imported(db, instrument.Id, story.Bath.Id);
            db.Add(Facts.Order($"{foundry.Grade.Code}-1", foundry.Grade.Id));
            db.Grades.Add(new()
            {
                Code = $"{foundry.Grade.Code}-R", Family = IronFamily.Ductile, Source = "invented for a test",
                Recipe = new() { TargetMgPercent = 0.045, InoculantCode = "FeSi75", MinutesToLastMould = 10 },
                Windows = [new() { Stage = WindowStage.Poured, Quantity = "CE", Least = 4.2, Aim = 4.3, Most = 4.4, Margin = 0.02 }],
            });
        });

        await using var db = database.Open();
        foreach (var type in db.Model.GetEntityTypes().Where(t => RowImages.Covers(t.ClrType)))
            Assert.True(await db.Ask<int>($"""SELECT COUNT(*) AS "Value" FROM "{type.GetTableName()}" """) > 0, $"{type.ClrType.Name}: none was written");
        Assert.Empty((await new TrailCheck(database.Contexts).Run(Ct)).Faults);
        Assert.Equal(0.045, (await db.Grades.SingleAsync(g => g.Code == foundry.Grade.Code + "-R", Ct)).Recipe!.TargetMgPercent);
        Assert.Null((await db.Grades.SingleAsync(g => g.Code == foundry.Grade.Code, Ct)).Recipe);
    }

    [Fact]
    public async Task Draft_AndKeyAndCounter_ComeBackAsTheyWere()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Heat();
        await using (var db = database.Open())
        {
            db.Drafts.Add(new() { Subject = "heat/17/sample", Field = "C", Text = "3,61", PersonId = foundry.Person.Id, ChangedAt = database.Clock.GetUtcNow() });
            db.ApiKeys.Add(new() { Name = "spectrometer", Hash = new string('a', 64), CreatedAt = database.Clock.GetUtcNow() });
            await db.SaveChangesAsync(Ct);
        }

        await using var other = database.Open();
        var draft = await other.Drafts.SingleAsync(d => d.PersonId == foundry.Person.Id, Ct);
        Assert.Equal(("heat/17/sample", "C", "3,61"), (draft.Subject, draft.Field, draft.Text));
        Assert.Null((await other.ApiKeys.SingleAsync(k => k.Name == "spectrometer", Ct)).RevokedAt);
        var counter = await other.HeatCounters.SingleAsync(c => c.SiteId == foundry.Site.Id, Ct);
        Assert.Equal((2026, 1), (counter.Year, counter.Last));
    }
}

public sealed class EveryEntityTestsOnSqlite(SqliteDatabase database) : EveryEntityTests(database), IClassFixture<SqliteDatabase>;

public sealed class EveryEntityTestsOnPostgres(PostgresDatabase database) : EveryEntityTests(database), IClassFixture<PostgresDatabase>;

using MeltShop.Records.Heats;
using MeltShop.Records.Mapping;
using MeltShop.Records.Tests.Databases;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Mapping;

/// <summary>A fact stays as it was written, whoever tries.</summary>
public abstract class AppendOnlyTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Fact_ChangedOrDeletedThroughTheContext_IsRefused()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        await using var db = database.Open();
        var weighing = await db.Weighings.FirstAsync(w => w.HeatId == story.Heat.Id, Ct);

        db.Entry(weighing).Property(w => w.Kg).CurrentValue = 1;
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
        db.ChangeTracker.Clear();
        db.Weighings.Remove(weighing);
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync(Ct));
    }

    [Fact]
    public async Task AppendOnlyTable_ChangedOrDeletedInTheDatabase_RefusesEachOfThem()
    {
        var foundry = await Foundry.Found(database);
        var story = await HeatStory.Tell(foundry, HeatState.Closed);
        await foundry.Write("Rest", (db, stamp) =>
        {
            db.FurnaceMetals.Add(stamp.Metal(foundry.Furnace.Id, FurnaceMetalKind.Tapped, -1));
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
            stamp.Imported(db, instrument.Id, story.Bath.Id);
            db.Heels.Add(stamp.Heel(foundry.Furnace.Id, story.Heat, 100, (Metallurgy.Elements.Element.C, 3.5)));
            db.MaterialAnalyses.Add(stamp.Analysis(foundry.Steel.Id, (Metallurgy.Elements.Element.C, 0.2, null, null)));
            db.Prices.Add(stamp.Price(foundry.Steel.Id, 300m));
            db.StockFacts.Add(stamp.Stock(foundry.Steel.Id, 1000));
            db.LotPlaces.Add(stamp.Place(foundry.Steel.Id, null, "Bay 4"));
            db.BurnDecisions.Add(stamp.SetAside(story.Bath.Id, 2));
            db.BathCorrections.Add(stamp.Correction(story.Heat.Id, story.Bath.Id));
        });
        await using var db = database.Open();
        var tables = db.Model.GetEntityTypes().Where(t => AppendOnly.Includes(t.ClrType)).ToList();

        Assert.True(tables.Count >= 17);
        foreach (var table in tables)
        {
            var (name, key) = (table.GetTableName(), table.FindPrimaryKey()!.Properties[0].GetColumnName());
            Assert.True(await db.Ask<int>($"""SELECT COUNT(*) AS "Value" FROM "{name}" """) > 0, $"{name} is empty: nothing was tried");
            var update = await Assert.ThrowsAnyAsync<Exception>(() => db.Send($"""UPDATE "{name}" SET "{key}" = "{key}" """));
            var delete = await Assert.ThrowsAnyAsync<Exception>(() => db.Send($"""DELETE FROM "{name}" """));
            Assert.All([update, delete], e => Assert.Contains("kept as written", e.Message, StringComparison.Ordinal));
        }
    }
}

public sealed class AppendOnlyTestsOnSqlite(SqliteDatabase database) : AppendOnlyTests(database), IClassFixture<SqliteDatabase>;

public sealed class AppendOnlyTestsOnPostgres(PostgresDatabase database) : AppendOnlyTests(database), IClassFixture<PostgresDatabase>;

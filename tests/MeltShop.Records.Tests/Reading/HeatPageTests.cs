using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Tests.Databases;

namespace MeltShop.Records.Tests.Reading;

public abstract class HeatPageTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Heat_Corrected_ShowsBothWithReasonAndPerson()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database));

        var weighings = (await Page.Load(story.Heat.Id, Ct))!.Weighings;

        Assert.Equal([(540, true, null, "Ida Anders"), (450, false, (long?)story.WrongWeighingId, "Ida Anders")],
            weighings.Select(w => (w.Kg, w.Origin.IsCorrected, w.Origin.CorrectsId, w.Origin.Person)));
        Assert.Equal("digits swapped", weighings[1].Origin.Reason);
        Assert.Equal(story.Foundry.Steel.Code, weighings[0].MaterialCode);
    }

    [Fact]
    public async Task Heat_Sample_KeepsValueDetectionLimitAndInstrumentText()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database));

        var bath = (await Page.Load(story.Heat.Id, Ct))!.Samples.Single(s => s.Id == story.Bath.Id);

        Assert.Equal([1, 2], bath.Burns.Select(b => b.Ordinal));
        Assert.Equal([new(Element.C, 3.61, false, "3.61"), new(Element.Mg, 0.001, true, "<0.0010")], bath.Burns[0].Readings);
        Assert.Equal(3.63, bath.Mean(Element.C)!.Value, 9);
        Assert.Null(bath.Mean(Element.Mg)); // below detection in one burn is no mean
    }

    [Fact]
    public async Task Heat_WithEverything_HasItAllInOrder()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database));

        var view = (await Page.Load(story.Heat.Id, Ct))!;

        Assert.Equal(
            [
                TimelineKind.Weighing, TimelineKind.Weighing, TimelineKind.Temperature, TimelineKind.Sample, TimelineKind.PocketCard, TimelineKind.Tap,
                TimelineKind.Sample, TimelineKind.CastingDecision,
            ],
            view.Timeline.Select(r => r.Kind));
        var ladle = Assert.Single(view.Ladles);
        Assert.Equal((TreatedLadleState.Held, 1075, 995, CastingVerdict.Hold), (ladle.State, ladle.Card!.StopWeightKg, ladle.Tap!.Kg, ladle.Decision!.Verdict));
        Assert.NotEqual(story.Ladle.Version, ladle.Version);
        Assert.Equal((story.Heat.Number, story.Foundry.Grade.Code, 1234.56m, false), (view.Heat.Number, view.Grade.Code, view.Plan.TotalCost, view.More));
        Assert.Null(await Page.Load(-1, Ct));
    }

    [Fact]
    public async Task Heat_WithTwiceAsMuch_CostsAsManyStatements()
    {
        var foundry = await Foundry.Found(database);
        var story = await HeatStory.Tell(foundry);
        var before = await Commands.Sent(() => Page.Load(story.Heat.Id, Ct));
        await foundry.Write("More", (db, stamp) =>
        {
            db.Samples.AddRange(stamp.Sample(story.Heat.Id, null, Laboratory.SampleKind.Bath, 3.5), stamp.Sample(story.Heat.Id, null, Laboratory.SampleKind.Bath, 3.4));
            db.Weighings.Add(stamp.Weighing(story.Heat.Id, foundry.Steel.Id, 3));
            db.TreatedLadles.Add(new() { HeatId = story.Heat.Id, LadleId = foundry.Ladle.Id, Ordinal = 2, State = TreatedLadleState.Prepared });
        });

        Assert.Equal(before, await Commands.Sent(() => Page.Load(story.Heat.Id, Ct)));
        Assert.InRange(before, 1, 35);
    }

    [Fact]
    public async Task Ladle_Treated_ShowsItsOwnSamplesAndTheBathBesideThem()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database));
        var page = new LadlePage(database.Contexts);

        var treated = (await page.Load(story.Ladle.Id, Ct))!;
        var prepared = (await page.Prepare(story.Heat.Id, Ct))!;

        Assert.Equal((story.LastMetal.Id, story.Bath.Id), (Assert.Single(treated.Samples).Id, treated.LastBath!.Id));
        Assert.Equal((1, null, 2), (treated.Treated!.Ordinal, prepared.Treated, prepared.NextOrdinal));
        Assert.Equal(1478, Assert.Single(prepared.Temperatures).TemperatureC);
        Assert.Empty(treated.Temperatures);
        Assert.Contains(treated.Ladles, l => l.Id == story.Foundry.Ladle.Id);
        Assert.Null(await page.Load(-1, Ct));
        Assert.Null(await page.Prepare(-1, Ct));
    }

    private HeatPage Page => new(database.Contexts);
}

public sealed class HeatPageTestsOnSqlite(SqliteDatabase database) : HeatPageTests(database), IClassFixture<SqliteDatabase>;

public sealed class HeatPageTestsOnPostgres(PostgresDatabase database) : HeatPageTests(database), IClassFixture<PostgresDatabase>;

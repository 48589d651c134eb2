using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;

namespace MeltShop.Records.Tests.Reading;

public abstract class LaboratoryPageTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Instruments_ThreeOfThem_HaveTheirOwnChecksAndCostTheStatementsOfOne()
    {
        var foundry = await Foundry.Found(database);
        var first = await Add(foundry, 3.30, 3.45);
        var one = await Commands.Sent(() => Page.Load(Ct));
        var second = await Add(foundry, 3.31);
        var third = await Add(foundry, 3.29, 3.28, 3.27);

        var view = await Page.Load(Ct);
        Assert.Equal(one, await Commands.Sent(() => Page.Load(Ct)));
        Assert.Equal([2, 1, 3], new[] { first, second, third }.Select(added => view.Instruments.Single(i => i.Instrument.Id == added.InstrumentId).Verdicts.Count));
        Assert.All(view.Instruments, i => Assert.Equal(i.Verdicts.OrderBy(v => v.At), i.Verdicts));
    }

    /// <summary>Twenty checks about 3.30 set the limits; a thousand that read 3.32 do not move them, though a page shows no more than the last thousand.</summary>
    [Fact]
    public async Task Limits_OfMoreChecksThanAreShown_StayThoseOfTheFirstTwenty()
    {
        var foundry = await Foundry.Found(database);
        var (instrument, reference) = await Add(foundry);
        await foundry.Write("Checks", (db, stamp) => db.AddRange(Enumerable.Range(0, 1020).Select(hour => Row(
            instrument, reference, stamp, hour, hour >= 20 ? 3.32 : hour % 2 == 0 ? 3.29 : 3.31))));

        var view = (await new InstrumentPage(database.Contexts).Load(instrument, Ct))!;
        var series = ControlSeries.Of(view.Samples, view.References, view.State.Instrument).Single(one => one.Reference.Id == reference);
        Assert.Equal(1020, view.Samples.Count);
        Assert.Equal(3.30, series.Limits!.Centre, 9);
    }

    private static int made;

    private LaboratoryPage Page => new(database.Contexts);

    /// <summary>An instrument with its reference and checks of these carbons, an hour apart.</summary>
    private static async Task<(long InstrumentId, long ReferenceId)> Add(Foundry foundry, params double[] carbons)
    {
        var code = $"{foundry.Site.Code}-{made++}";
        var instrument = new Instrument { Code = code, Name = code, Kind = InstrumentKind.Spark, Elements = [new() { Element = Element.C, Repeatability = 0.02 }] };
        var reference = new ReferenceMaterial { Code = code, Name = code, Certificate = "invented for a test", Values = [new() { Element = Element.C, Percent = 3.30 }] };
        await foundry.Write("AddInstrument", (db, _) => db.AddRange(instrument, reference));
        foreach (var (hour, carbon) in carbons.Index())
        {
            await foundry.Write("Check", (db, stamp) => db.Add(Row(instrument.Id, reference.Id, stamp, hour, carbon)));
        }

        return (instrument.Id, reference.Id);
    }

    private static ControlSample Row(long instrument, long reference, Stamp stamp, int hour, double carbon) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt.AddHours(hour), EnteredAt = stamp.EnteredAt,
        InstrumentId = instrument, ReferenceMaterialId = reference,
        Readings = [new() { Ordinal = 1, Element = Element.C, Percent = carbon, InstrumentText = "3.3" }],
    };
}

public sealed class LaboratoryPageTestsOnSqlite(SqliteDatabase database) : LaboratoryPageTests(database), IClassFixture<SqliteDatabase>;

public sealed class LaboratoryPageTestsOnPostgres(PostgresDatabase database) : LaboratoryPageTests(database), IClassFixture<PostgresDatabase>;

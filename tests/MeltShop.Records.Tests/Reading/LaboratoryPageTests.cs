using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Tests.Databases;

namespace MeltShop.Records.Tests.Reading;

public abstract class LaboratoryPageTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Instruments_ThreeOfThem_HaveTheirOwnChecksAndCostTheStatementsOfOne()
    {
        var foundry = await Foundry.Found(database);
        await Add(foundry, 3.30, 3.45);
        var one = await Commands.Sent(() => Page.Load(Ct));
        await Add(foundry, 3.31);
        await Add(foundry, 3.29, 3.28, 3.27);

        var view = await Page.Load(Ct);
        Assert.Equal(one, await Commands.Sent(() => Page.Load(Ct)));
        Assert.Equal([2, 1, 3], view.Instruments.Select(i => i.Verdicts.Count));
        Assert.All(view.Instruments, i => Assert.Equal(i.Verdicts.OrderBy(v => v.At), i.Verdicts));
    }

    private static int made;

    private LaboratoryPage Page => new(database.Contexts);

    /// <summary>An instrument with its reference and checks of these carbons, an hour apart.</summary>
    private static async Task Add(Foundry foundry, params double[] carbons)
    {
        var code = $"{foundry.Site.Code}-{made++}";
        var instrument = new Instrument { Code = code, Name = code, Kind = InstrumentKind.Spark, Elements = [new() { Element = Element.C, Repeatability = 0.02 }] };
        var reference = new ReferenceMaterial { Code = code, Name = code, Certificate = "invented for a test", Values = [new() { Element = Element.C, Percent = 3.30 }] };
        await foundry.Write("AddInstrument", (db, _) => db.AddRange(instrument, reference));
        foreach (var (hour, carbon) in carbons.Index())
        {
            await foundry.Write("Check", (db, stamp) => db.Add(new ControlSample
            {
                EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt.AddHours(hour), EnteredAt = stamp.EnteredAt,
                InstrumentId = instrument.Id, ReferenceMaterialId = reference.Id,
                Readings = [new() { Ordinal = 1, Element = Element.C, Percent = carbon, InstrumentText = "3.3" }],
            }));
        }
    }
}

public sealed class LaboratoryPageTestsOnSqlite(SqliteDatabase database) : LaboratoryPageTests(database), IClassFixture<SqliteDatabase>;

public sealed class LaboratoryPageTestsOnPostgres(PostgresDatabase database) : LaboratoryPageTests(database), IClassFixture<PostgresDatabase>;

using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Tests.Databases;

namespace MeltShop.Records.Tests.Reading;

/// <summary>How far a ledger may be off is known from its last lines: nobody reads all that ever came into a furnace.</summary>
public abstract class LedgerBasisTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(700, 70_000)] // all of them: 5 % of it are less than the furnace holds
    [InlineData(1700, 150_000)] // three times 500 lines: 5 % of 120,000 kg are the 6000 kg that it holds
    public async Task Furnace_ThatWasNeverDipped_IsReadUntilItsDoubtIsAFullFurnace(int lines, double cameKg)
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("WeighIn", (db, stamp) =>
        {
            for (var n = 0; n < lines; n++) db.Add(stamp.Metal(foundry.Furnace.Id, n % 2 == 0 ? FurnaceMetalKind.Charged : FurnaceMetalKind.PouredBack, 100));
            db.Add(stamp.Metal(foundry.Furnace.Id, FurnaceMetalKind.Tapped, -5000));
        });
        await using var db = database.Open();

        var basis = await LedgerBasis.Load(db, foundry.Furnace.Id, Ct);

        Assert.Equal(((DateTimeOffset?)null, cameKg, 6000d), (basis.DippedAt, basis.CameKg, basis.CapacityKg));
    }

    [Fact]
    public async Task Furnace_ThatWasDipped_IsReadSinceThen()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("WeighIn", (db, stamp) => db.Add(stamp.Metal(foundry.Furnace.Id, FurnaceMetalKind.Charged, 4000)));
        await foundry.Write("Dip", (db, stamp) => db.Add(new FurnaceMetal
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
            FurnaceId = foundry.Furnace.Id, Kind = FurnaceMetalKind.Dipped, Kg = -100, LevelKg = 3900, PlusMinusKg = 50,
        }));
        await foundry.Write("WeighIn", (db, stamp) => db.Add(stamp.Metal(foundry.Furnace.Id, FurnaceMetalKind.Charged, 250)));
        await using var db = database.Open();

        var basis = await LedgerBasis.Load(db, foundry.Furnace.Id, Ct);

        Assert.Equal((3900d, 50d, 250d), (basis.LevelKg, basis.PlusMinusKg!.Value, basis.CameKg));
    }
}

public sealed class LedgerBasisTestsOnSqlite(SqliteDatabase database) : LedgerBasisTests(database), IClassFixture<SqliteDatabase>;

public sealed class LedgerBasisTestsOnPostgres(PostgresDatabase database) : LedgerBasisTests(database), IClassFixture<PostgresDatabase>;

using MeltShop.Records.Heats;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Writing;

public abstract class ChangedThingsTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public void Table_EachThatTheTrailHolds_HasAKindAndTheColumnThatNamesWhoseItIs()
    {
        using var db = database.Open();
        foreach (var type in db.Model.GetEntityTypes().Where(type => RowImages.Covers(type.ClrType) && !type.IsOwned()))
        {
            var table = type.GetTableName()!;
            Assert.True(ChangedThings.KindOf(table) is not null, $"{table}: nobody hears of its rows");
            if (ChangedThings.WhoseColumn(table) is { Length: > 0 } column) Assert.True(type.FindProperty(column)?.ClrType is { } id && (Nullable.GetUnderlyingType(id) ?? id) == typeof(long), $"{table}.{column}");
        }
    }

    /// <summary>The write names the heat alone; the booking and the metal are heard of all the same, each thing once.</summary>
    [Fact]
    public async Task Write_ThatNamesOneThing_IsHeardOfAllThatItWrote()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat(HeatState.Charging);
        var notices = new ChangeNotices(TimeProvider.System);
        await using var listener = notices.Listen(Ct).GetAsyncEnumerator(Ct);
        var version = Guid.NewGuid();

        await new Recorder(database.Contexts, notices, TimeProvider.System).Record(
            foundry.Entry("WeighIn"),
            (db, stamp, _) =>
            {
                db.AddRange(stamp.Stock(foundry.Steel.Id, -10), stamp.Stock(foundry.Steel.Id, -5), stamp.Metal(foundry.Furnace.Id, FurnaceMetalKind.Tapped, -1.25));
                return Task.FromResult(Written<int>.Of(1, new ChangeNotice(ChangeKind.Heat, heat.Id, version)));
            },
            Ct);

        Assert.True(await listener.MoveNextAsync());
        Assert.Equal(
            [new(ChangeKind.Furnace, foundry.Furnace.Id), new(ChangeKind.Heat, heat.Id, version), new(ChangeKind.Material, foundry.Steel.Id)],
            listener.Current.OrderBy(notice => notice.Kind, StringComparer.Ordinal));
    }
}

public sealed class ChangedThingsTestsOnSqlite(SqliteDatabase database) : ChangedThingsTests(database), IClassFixture<SqliteDatabase>;

public sealed class ChangedThingsTestsOnPostgres(PostgresDatabase database) : ChangedThingsTests(database), IClassFixture<PostgresDatabase>;

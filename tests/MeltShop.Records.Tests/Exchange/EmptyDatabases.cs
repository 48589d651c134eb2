using MeltShop.Records.Databases;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Exchange;

/// <summary>Databases without a table, to be filled.</summary>
internal static class EmptyDatabases
{
    public static async Task<IReadOnlyList<RecordsOptions>> Both(string folder) => [Sqlite(folder), await Postgres()];

    public static RecordsOptions Sqlite(string folder) => SqliteDatabase.OptionsFor(Path.Combine(folder, $"{Guid.NewGuid():N}", "new.db"));

    public static async Task<RecordsOptions> Postgres()
    {
        var name = $"empty_{Guid.NewGuid():N}";
        await PostgresDatabase.OnServer($"CREATE DATABASE {name}");
        return PostgresDatabase.OptionsFor(name);
    }

    /// <summary>The numbers that the database gives go on after those that came: the next entry is written like any other.</summary>
    public static async Task GoesOn(RecordsOptions options)
    {
        var contexts = new ContextFactory(options);
        await using var db = contexts.CreateDbContext();
        var person = await db.Users.FirstAsync(TestContext.Current.CancellationToken);
        var material = await db.Materials.FirstAsync(TestContext.Current.CancellationToken);
        var recorder = new Recorder(contexts, new ChangeNotices(TimeProvider.System), TimeProvider.System);
        for (var n = 0; n < 3; n++)
        {
            var recorded = await recorder.Record(
                new(Guid.NewGuid(), "Price", person.Id, "Ida", "tablet", TimeProvider.System.GetUtcNow(), new { }),
                (own, stamp, _) =>
                {
                    own.Prices.Add(stamp.Price(material.Id, 3.5m));
                    own.StockFacts.Add(new()
                    {
                        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
                        MaterialId = material.Id, Kind = Yard.StockKind.Charged, Kg = 0,
                    });
                    own.Heats.OrderBy(h => h.Id).First().Version = Guid.Empty;
                    return Task.FromResult(Written<int>.Of(1));
                }, TestContext.Current.CancellationToken);
            Assert.Empty(recorded.Findings);
        }

        Assert.Empty((await new TrailCheck(contexts).Run(TestContext.Current.CancellationToken)).Faults);
    }
}

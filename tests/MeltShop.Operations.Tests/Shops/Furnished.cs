using System.Collections.Concurrent;
using MeltShop.Records;
using MeltShop.Records.Tests.Databases;

namespace MeltShop.Operations.Tests.Shops;

/// <summary>
/// A shop that the operations have set up, once for each kind of database: every test gets a copy of its own, as people, figures
/// and clock stood then. Setting it up takes two dozen operations and five password hashes, more than most tests do themselves.
/// </summary>
internal sealed record Furnished(Shop Shop, Func<Database> Copy)
{
    private static readonly ConcurrentDictionary<RecordsProvider, Lazy<Task<Furnished>>> Made = new();

    public static Task<Furnished> On(RecordsProvider provider) =>
        Made.GetOrAdd(provider, static on => new(() => Furnish(on))).Value;

    private static async Task<Furnished> Furnish(RecordsProvider provider)
    {
        Database database = provider == RecordsProvider.Sqlite ? new SqliteDatabase() : new PostgresDatabase();
        await database.InitializeAsync();
        var shop = await Shop.SetUp(database);
        return new(shop, await database.Seal());
    }
}

using MeltShop.Records;
using MeltShop.Records.Heats;

namespace MeltShop.Operations.Tests.Shops;

/// <summary>One shop on SQLite for a class whose tests change nothing that another of them looks at, with a sampled bath in its furnace.</summary>
public sealed class OneShop : IAsyncLifetime
{
    public Shop Shop { get; private set; } = null!;

    public Heat Bath { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Shop = await Shop.Open(RecordsProvider.Sqlite);
        Bath = await Shop.Bath();
    }

    public ValueTask DisposeAsync() => Shop.DisposeAsync();
}

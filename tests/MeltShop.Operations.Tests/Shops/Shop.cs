using MeltShop.Operations.People;
using MeltShop.Operations.Sites;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Records.Tests.Databases;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Operations.Tests.Shops;

/// <summary>A small invented foundry, set up by the operations themselves, on one of the databases.</summary>
public sealed partial class Shop : IAsyncDisposable
{
    private readonly Database database;
    private readonly ServiceProvider services;
    private readonly Dictionary<string, Acting> people = [];

    private Shop(Database database, ShopClock clock)
    {
        this.database = database;
        Clock = clock;
        services = new ServiceCollection()
            .AddSingleton<TimeProvider>(Clock)
            .AddMeltShopRecords(database.Options)
            .AddMeltShopOperations()
            .BuildServiceProvider();
    }

    /// <summary>The databases that every story is told on.</summary>
    public static TheoryData<RecordsProvider> Databases => [RecordsProvider.Sqlite, RecordsProvider.Postgres];

    /// <summary>Everybody's.</summary>
    public const string Password = "a long test password";

    public ShopClock Clock { get; }
    public DateTimeOffset Now => Clock.GetUtcNow();
    public Acting Melter => people[Role.Melter];
    public Acting Metallurgist => people[Role.Metallurgist];
    public Acting Inspector => people[Role.Inspector];
    public Acting Supervisor => people[Role.Supervisor];
    public Acting Administrator => people[Role.Administrator];

    /// <summary>The program itself, before there are people.</summary>
    public static Acting Program { get; } = new(0, "Set-up", "command line", [Role.Administrator]);

    public static async Task<Shop> Open(RecordsProvider provider)
    {
        var furnished = await Furnished.On(provider);
        var database = furnished.Copy();
        await database.InitializeAsync();
        var shop = new Shop(database, furnished.Shop.Clock.Copy());
        foreach (var (role, person) in furnished.Shop.people) shop.people[role] = person;
        shop.TakeOver(furnished.Shop);
        return shop;
    }

    /// <summary>Sets one up in an empty database.</summary>
    internal static async Task<Shop> SetUp(Database database)
    {
        var shop = new Shop(database, new());
        foreach (var role in Role.All) shop.people[role] = await shop.Hire(role);
        await shop.Furnish();
        return shop;
    }

    public TOperation Get<TOperation>()
        where TOperation : notnull => services.GetRequiredService<TOperation>();

    public RecordsContext Db() => services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContext();

    public async ValueTask DisposeAsync()
    {
        await services.DisposeAsync();
        await database.DisposeAsync();
    }

    private async Task<Acting> Hire(string role)
    {
        var id = await Get<AddPerson>().Run(Program, new(Guid.NewGuid(), Now, $"the-{role}", $"The {role}", [role]) { Password = Password });
        return new Acting(id.Value, $"The {role}", "Test bench", [role]);
    }
}

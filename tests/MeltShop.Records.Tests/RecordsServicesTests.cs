using MeltShop.Records.People;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Records.Tests;

public abstract class RecordsServicesTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Services_OfAProgram_AreAllThere()
    {
        await using var services = Provider(new ServiceCollection());

        foreach (var type in typeof(RecordsContext).Assembly.GetTypes().Where(t => t.Namespace?.StartsWith("MeltShop.Records.Reading", StringComparison.Ordinal) == true
                     && t is { IsClass: true, IsPublic: true } && t.Name.EndsWith("Page", StringComparison.Ordinal)))
            Assert.NotNull(services.GetRequiredService(type));
        Assert.NotNull(services.GetRequiredService<Recorder>());
        Assert.NotNull(services.GetRequiredService<TrailCheck>());
        Assert.Same(services.GetRequiredService<ChangeNotices>(), services.GetRequiredService<ChangeNotices>());
    }

    [Fact]
    public async Task People_ThroughIdentity_AreKept()
    {
        var collection = new ServiceCollection();
        collection.AddLogging();
        collection.AddIdentityCore<Person>().AddRoles<IdentityRole<long>>().AddEntityFrameworkStores<RecordsContext>();
        await using var services = Provider(collection);
        await using var scope = services.CreateAsyncScope();
        var people = scope.ServiceProvider.GetRequiredService<UserManager<Person>>();
        var roles = scope.ServiceProvider.GetRequiredService<RoleManager<IdentityRole<long>>>();

        Assert.True((await roles.CreateAsync(new(Role.Melter))).Succeeded);
        var person = new Person { UserName = "jo", DisplayName = "Jo Ahrens", LockoutEnd = new DateTimeOffset(2026, 1, 1, 2, 0, 0, TimeSpan.FromHours(2)) };
        Assert.True((await people.CreateAsync(person, "Long-enough-1")).Succeeded);
        Assert.True((await people.AddToRoleAsync(person, Role.Melter)).Succeeded);

        await using var db = database.Open();
        var kept = await db.Users.SingleAsync(p => p.UserName == "jo", Ct);
        Assert.Equal(("Jo Ahrens", true, new DateTimeOffset(2026, 1, 1, 0, 0, 0, TimeSpan.Zero)), (kept.DisplayName, kept.IsActive, kept.LockoutEnd!.Value));
        Assert.Equal([Role.Melter], await people.GetRolesAsync(kept));
    }

    [Fact]
    public async Task Keys_OfTheCookies_AreKept()
    {
        await using var services = Provider(new ServiceCollection());
        await using var scope = services.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<RecordsContext>();
        db.DataProtectionKeys.Add(new DataProtectionKey { FriendlyName = "key-1", Xml = "<key/>" });
        await db.SaveChangesAsync(Ct);

        await using var other = database.Open();
        Assert.Equal("<key/>", (await other.DataProtectionKeys.SingleAsync(Ct)).Xml);
    }

    private ServiceProvider Provider(IServiceCollection services) => services.AddMeltShopRecords(database.Options)
        .BuildServiceProvider(new ServiceProviderOptions { ValidateOnBuild = true, ValidateScopes = true });
}

public sealed class RecordsServicesTestsOnSqlite(SqliteDatabase database) : RecordsServicesTests(database), IClassFixture<SqliteDatabase>;

public sealed class RecordsServicesTestsOnPostgres(PostgresDatabase database) : RecordsServicesTests(database), IClassFixture<PostgresDatabase>;

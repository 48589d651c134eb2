using System.Globalization;
using System.Security.Claims;
using Bunit;
using Bunit.TestDoubles;
using MeltShop.Operations;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.SignIn;
using MeltShop.Web.Tests.Components;
using MeltShop.Web.Tests.Running;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Pages;

/// <summary>Draws pages over a real database with the real operations: what a page shows after a press is what was recorded.</summary>
public abstract class ShopTest : ComponentTest, IAsyncLifetime
{
    /// <summary>Of whoever is signed in.</summary>
    protected const string Password = "a long test password";

    private static readonly string Hash = new PasswordHasher<Person>().HashPassword(new() { DisplayName = "" }, Password);

    /// <summary>Of this test alone; whole between two uses, for connections are not kept open.</summary>
    protected string DatabaseFile { get; } = Path.Combine(Path.GetTempPath(), $"meltshop-page-{Guid.NewGuid():N}.db");

    /// <summary>Of the pages and the operations.</summary>
    protected SetClock Clock { get; } = new();

    private readonly BunitAuthorizationContext person;

    protected ShopTest()
    {
        person = AddAuthorization();
        Services.AddSingleton<TimeProvider>(Clock);
        Services.AddMeltShopRecords(new() { Provider = RecordsProvider.Sqlite, ConnectionString = $"Data Source={DatabaseFile};Pooling=False" });
        Services.AddMeltShopOperations();
        Services.AddScoped<ActingPerson>();
        Services.AddScoped<HandingIn>();
        Services.AddScoped<QuietAddress>();
        Services.AddSingleton<Web.Api.Entries.EntryDesk>();
        Services.AddSingleton<ShopSite>();
        Services.AddSingleton<Web.Watching.RefusedFiles>();
        SetRendererInfo(new Microsoft.AspNetCore.Components.RendererInfo("Server", true));
    }

    /// <summary>Does everything: what a test prepares, it prepares as this person.</summary>
    protected static Acting Founder { get; } = new(1, "Test Founder", "test", Role.All);

    /// <summary>Now, for commands.</summary>
    protected DateTimeOffset Now => Services.GetRequiredService<TimeProvider>().GetUtcNow();

    protected static CancellationToken Cancellation => Xunit.TestContext.Current.CancellationToken;

    /// <summary>Takes an operation or a query.</summary>
    protected TService The<TService>() where TService : notnull => Services.GetRequiredService<TService>();

    /// <summary>Opens pages as somebody with these roles.</summary>
    protected void SignIn(params string[] roles)
    {
        person.SetAuthorized(Founder.PersonName);
        person.SetClaims([
            new(PersonClaims.Id, Founder.PersonId.ToString(CultureInfo.InvariantCulture)), new(PersonClaims.Name, Founder.PersonName),
            .. roles.Select(role => new Claim(PersonClaims.Role, role)),
        ]);
    }

    public async ValueTask InitializeAsync()
    {
        await Once("founder", Found);
        await Prepare();
    }

    /// <summary>What lies in the records before the page is opened.</summary>
    protected abstract Task Prepare();

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        foreach (var part in Directory.EnumerateFiles(Path.GetTempPath(), Path.GetFileName(DatabaseFile) + "*")) File.Delete(part);
    }

    /// <summary>Lays what many tests begin with, once; each of them has a copy of its own, and goes on by the clock as it stood then.</summary>
    /// <param name="what">A name that nothing else has.</param>
    /// <param name="lay">Writes records and nothing else. What it answers is changed by nobody.</param>
    protected async Task<T> Once<T>(string what, Func<Task<T>> lay)
        where T : notnull
    {
        var laid = Laid.Of(what);
        await laid.Turn.WaitAsync(Cancellation);
        try
        {
            if (laid.Kept is null)
            {
                var answer = await lay();
                laid.Kept = (await File.ReadAllBytesAsync(DatabaseFile, Cancellation), Clock.GetUtcNow(), answer);
                return answer;
            }
        }
        finally
        {
            laid.Turn.Release();
        }

        await File.WriteAllBytesAsync(DatabaseFile, laid.Kept.Value.Records, Cancellation);
        Clock.GoOnFrom(laid.Kept.Value.Clock);
        return (T)laid.Kept.Value.Answer;
    }

    private async Task<long> Found()
    {
        await File.WriteAllBytesAsync(DatabaseFile, await EmptyRecords.Bytes, Cancellation);
        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        db.Users.Add(new Person { Id = Founder.PersonId, UserName = "founder", DisplayName = Founder.PersonName, PasswordHash = Hash });
        await db.SaveChangesAsync(Cancellation);
        return Founder.PersonId;
    }
}

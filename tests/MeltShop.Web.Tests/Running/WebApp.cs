using MeltShop.Operations;
using MeltShop.Operations.People;
using MeltShop.Web.Composition;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Running;

/// <summary>The whole app as a start in earnest would have it: a data folder of its own with nobody in it, no demo.</summary>
public class WebApp : WebApplicationFactory<Program>
{
    /// <summary>Of every person that a test adds.</summary>
    public const string Password = "a long enough one";

    private static DateTimeOffset Now => TimeProvider.System.GetUtcNow();

    public string DataFolder { get; } = Directory.CreateTempSubdirectory("meltshop-web-").FullName;

    /// <summary>Whether this is the first start: the data folder is empty then. Else the records are there, migrated and without a row.</summary>
    public bool IsFirstStart { get; init; }

    /// <summary>A client that sends a valid key.</summary>
    public async Task<HttpClient> CreateMachineAsync(bool readsRecords = false)
    {
        var client = CreateClient();
        client.DefaultRequestHeaders.Authorization = new("Bearer", await AddKeyAsync("test", readsRecords));
        return client;
    }

    /// <summary>Makes a key as the command does.</summary>
    public async Task<string> AddKeyAsync(string name, bool readsRecords = false)
    {
        var secret = ApiKeySecret.Make();
        await DoAsync<AddApiKey, AddApiKey.Command, long>(new(Guid.NewGuid(), Now, name, secret.Hash, readsRecords));
        return secret.Text;
    }

    /// <summary>Ends the keys of a name as the command does.</summary>
    public async Task RevokeKeysAsync(string name)
    {
        var keys = await Services.GetRequiredService<ApiKeys>().ListAsync(TestContext.Current.CancellationToken);
        foreach (var key in keys.Where(key => key.Name == name))
            await DoAsync<RevokeApiKey, RevokeApiKey.Command, DateTimeOffset>(new(Guid.NewGuid(), Now, key.Id));
    }

    /// <summary>Takes a person into the shop, with the password <see cref="Password"/>.</summary>
    public Task<long> AddPersonAsync(string userName, params string[] roles) =>
        DoAsync<AddPerson, AddPerson.Command, long>(new(Guid.NewGuid(), Now, userName, $"{userName} Somebody", roles) { Password = Password });

    private async Task<TResult> DoAsync<TOperation, TCommand, TResult>(TCommand command)
        where TOperation : Operation<TCommand, TResult>
        where TCommand : Command
    {
        var outcome = await Services.GetRequiredService<TOperation>().Run(ProgramItself.Acting, command, TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join("; ", outcome.Findings));
        return outcome.Value;
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("MeltShop:DataFolder", DataFolder);
        if (!IsFirstStart) File.WriteAllBytes(Path.Combine(DataFolder, "meltshop.db"), EmptyRecords.Bytes.GetAwaiter().GetResult());
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (!disposing) return;
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        if (Directory.Exists(DataFolder)) Directory.Delete(DataFolder, recursive: true);
    }
}

using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Running;

/// <summary>The whole app as a first start in earnest would have it: an empty data folder of its own, no demo.</summary>
public class WebApp : WebApplicationFactory<Program>
{
    public string DataFolder { get; } = Directory.CreateTempSubdirectory("meltshop-web-").FullName;

    /// <summary>A client that sends a valid key.</summary>
    public async Task<HttpClient> CreateMachineAsync()
    {
        var client = CreateClient();
        client.DefaultRequestHeaders.Authorization = new("Bearer", await AddKeyAsync("test"));
        return client;
    }

    /// <summary>Makes a key as the command does.</summary>
    public async Task<string> AddKeyAsync(string name)
    {
        return await Services.GetRequiredService<ApiKeys>().AddAsync(name, TestContext.Current.CancellationToken);
    }

    /// <summary>Ends the keys of a name as the command does.</summary>
    public async Task RevokeKeysAsync(string name) =>
        Assert.NotEqual(0, await Services.GetRequiredService<ApiKeys>().RevokeAsync(name, TestContext.Current.CancellationToken));

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("MeltShop:DataFolder", DataFolder);
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (!disposing) return;
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        if (Directory.Exists(DataFolder)) Directory.Delete(DataFolder, recursive: true);
    }
}

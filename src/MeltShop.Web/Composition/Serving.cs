using MeltShop.Web.Demo;
using MeltShop.Web.SignIn;

namespace MeltShop.Web.Composition;

/// <summary>The program without a command: prepares what it stands on, serves, and says where.</summary>
internal static class Serving
{
    /// <summary>Serves until it is told to stop.</summary>
    /// <param name="args">Settings.</param>
    /// <returns>The exit code.</returns>
    public static async Task<int> RunAsync(string[] args)
    {
        var builder = ProgramFolder.CreateBuilder(args);
        builder.AddMeltShop();
        await using var app = builder.Build();
        app.UseMeltShop();
        await PrepareAsync(app.Services, app.Lifetime.ApplicationStopping);
        app.Lifetime.ApplicationStarted.Register(() => app.Services.GetRequiredService<StartMessage>().Print(app.Urls));
        await app.RunAsync();
        return 0;
    }

    /// <summary>What has to be there before the first request is answered.</summary>
    private static async Task PrepareAsync(IServiceProvider services, CancellationToken stopping)
    {
        await services.GetRequiredService<DatabasePreparation>().PrepareAsync(stopping);
        if (services.GetRequiredService<ShopSettings>().Demo) await services.GetRequiredService<DemoFoundry>().SeedAsync(stopping);
        await services.GetRequiredService<FirstAdministrator>().LookAsync(stopping);
    }
}

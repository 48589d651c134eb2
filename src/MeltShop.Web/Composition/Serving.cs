using MeltShop.Web.Demo;
using MeltShop.Web.SignIn;

namespace MeltShop.Web.Composition;

/// <summary>The program without a command: prepares what it stands on, serves, and says where.</summary>
internal static class Serving
{
    /// <summary>Serves until it is told to stop.</summary>
    /// <returns>The exit code: 0, or 1 where the installation is not set up so that it can start.</returns>
    public static async Task<int> ServeAsync(this WebApplication app)
    {
        var stopping = app.Lifetime.ApplicationStopping;
        await app.Services.GetRequiredService<DatabasePreparation>().PrepareAsync(stopping);
        if (app.Services.GetRequiredService<ShopSettings>().Demo) await app.Services.GetRequiredService<DemoFoundry>().SeedAsync(stopping);
        await app.Services.GetRequiredService<FirstAdministrator>().LookAsync(stopping);
        app.Lifetime.ApplicationStarted.Register(() => app.Services.GetRequiredService<StartMessage>().Print(app.Urls));
        await app.RunAsync();
        return 0;
    }
}

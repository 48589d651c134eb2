using MeltShop.Web.Api.Entries;
using MeltShop.Web.Components;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Looks;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components.Server;
using MudBlazor.Services;

namespace MeltShop.Web;

/// <summary>The pages: what they need, and where they are served.</summary>
public static class MeltShopPages
{
    public static IServiceCollection AddMeltShopPages(this IServiceCollection services)
    {
        services.AddMeltShopTexts();
        services.AddRazorComponents().AddInteractiveServerComponents();
        services.AddOptions<CircuitOptions>().Configure<IConfiguration>((circuits, settings) =>
        {
            if (settings.GetValue<int?>("MeltShop:KeepCircuitSeconds") is { } seconds) circuits.DisconnectedCircuitRetentionPeriod = TimeSpan.FromSeconds(seconds);
        });
        services.AddCascadingAuthenticationState();
        services.AddMudServices();
        services.AddSingleton<ShopSite>();
        services.AddScoped<HandingIn>();
        services.AddScoped<QuietAddress>();
        services.AddSingleton<EntryDesk>();
        return services;
    }

    /// <summary>Call it after authentication and authorisation are in the pipeline.</summary>
    public static WebApplication MapMeltShopPages(this WebApplication app)
    {
        var site = app.Services.GetRequiredService<ShopSite>();
        app.UseRequestLocalization();
        app.Use((request, next) =>
        {
            ShopUnits.Speak(() => site.Units);
            return next(request);
        });
        app.UseAntiforgery();
        app.MapStaticAssets().AllowAnonymous();
        app.MapLook();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
        return app;
    }
}
